#pragma once

#include <QLineEdit>

namespace coutil {

// A line of text that shows a value of the folio. Undo and redo are the window's, not the line's:
// what was typed here is a change of the folio like any other.
class TextField : public QLineEdit {
    Q_OBJECT

  public:
    explicit TextField(QWidget* parent = nullptr);

    void showText(const QString& text);  // does not signal; leaves cursor and selection if the same

  signals:
    void entered();  // the field has the keyboard
    void left();     // the maker is done with it: Enter, Tab, a click elsewhere

  protected:
    bool event(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
};

}  // namespace coutil
