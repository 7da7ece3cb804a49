#include "ui/fields/text_field.h"

#include <QKeyEvent>

namespace coutil {

namespace {

// A line on X11 would keep Ctrl+E for going to its end, which the End key does too.
bool isWindowsKey(const QKeyEvent& key) {
    return key.modifiers() == Qt::ControlModifier && key.key() == Qt::Key_E;
}

}  // namespace

TextField::TextField(QWidget* parent) : QLineEdit(parent) {
    connect(this, &QLineEdit::editingFinished, this, &TextField::left);
}

void TextField::showText(const QString& text) {
    if (text == this->text()) return;
    setText(text);
    if (!hasFocus()) setCursorPosition(0);  // of a long text the beginning is seen
}

bool TextField::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo) ||
            isWindowsKey(*key)) {
            event->ignore();
            return false;
        }
    }
    return QLineEdit::event(event);
}

void TextField::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    emit entered();
}

}  // namespace coutil
