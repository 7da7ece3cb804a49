#pragma once

#include <QAbstractButton>

namespace coutil {

// A bench's name in the top line; the one the maker works at is underlined.
class BenchButton : public QAbstractButton {
    Q_OBJECT

  public:
    explicit BenchButton(const QString& words, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
};

}  // namespace coutil
