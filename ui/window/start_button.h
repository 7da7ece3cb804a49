#pragma once

#include <QAbstractButton>

namespace coutil {

// A line of the start screen to press: drawing, words, and a second quiet line that says more.
class StartButton : public QAbstractButton {
    Q_OBJECT

  public:
    StartButton(const QString& words, const QString& more, const QIcon& drawing,
                QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    void drawWords(QPainter& painter);
    [[nodiscard]] QFont wordsFont() const;
    [[nodiscard]] QFont moreFont() const;

    QString more_;
};

}  // namespace coutil
