#pragma once

#include <QWidget>

class QToolButton;
class QVBoxLayout;

namespace coutil {

// A line that opens what is seldom needed. The contents are made by the caller and added once.
class FoldOut : public QWidget {
    Q_OBJECT

  public:
    explicit FoldOut(const QString& title, QWidget* parent = nullptr);

    void addContent(QWidget* content);
    void setOpen(bool isOpen);
    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] QToolButton& button() { return *button_; }

  signals:
    void openChanged(bool isOpen);

  private:
    QToolButton* button_;
    QWidget* inside_;
    QVBoxLayout* column_;
};

}  // namespace coutil
