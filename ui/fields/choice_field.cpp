#include "ui/fields/choice_field.h"

#include <QSignalBlocker>
#include <QWheelEvent>

namespace coutil {

ChoiceField::ChoiceField(QWidget* parent) : QComboBox(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(8);
    // currentIndexChanged and not activated: screen readers and keys change it without a click.
    connect(this, &QComboBox::currentIndexChanged, this, [this] {
        if (value() == lastValue_) return;
        lastValue_ = value();
        emit chosen(lastValue_);
    });
}

void ChoiceField::setChoices(const QList<Choice>& choices) {
    const QSignalBlocker quiet(this);
    const int kept = value();
    clear();
    for (const Choice& choice : choices) addItem(choice.words, choice.value);
    setValue(kept);
}

void ChoiceField::setValue(int value) {
    const QSignalBlocker quiet(this);
    setCurrentIndex(findData(value));
    lastValue_ = this->value();
}

int ChoiceField::value() const { return currentIndex() < 0 ? -1 : currentData().toInt(); }

void ChoiceField::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QComboBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

}  // namespace coutil
