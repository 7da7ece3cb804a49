#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace coutil {

// The foot of the window: what the next drag or key will do on the left; position, zoom and the
// number of problems on the right.
class StatusLine : public QWidget {
    Q_OBJECT

  public:
    explicit StatusLine(QWidget* parent = nullptr);

    void showHint(const QString& text);
    void showPosition(const QString& text);  // empty: the pointer is not on the table
    void showZoom(double percent);
    void showProblems(int count);

  signals:
    void problemsWanted();  // the maker asks to see them

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void elideHint();

    QString hintText_;
    QLabel* hint_;
    QLabel* position_;
    QLabel* zoom_;
    QPushButton* problems_;
};

}  // namespace coutil
