#include "ui/fields/choice_field.h"

#include <QSignalBlocker>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QWheelEvent>

namespace coutil {

namespace {
constexpr int kTextAirPx = 4;
}  // namespace

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

// Words too long for the field end in an ellipsis instead of in the middle of a letter.
void ChoiceField::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const QRect room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    option.currentText =
        fontMetrics().elidedText(currentText(), Qt::ElideRight, room.width() - kTextAirPx);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

void ChoiceField::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QComboBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

}  // namespace coutil
