#include "ui/fields/slider_length_field.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <cmath>

namespace coutil {

SliderLengthField::SliderLengthField(QWidget* parent)
    : QWidget(parent), slider_(new QSlider(Qt::Horizontal)), field_(new LengthField) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(slider_, 1);
    row->addWidget(field_);
    setFocusProxy(field_);
    setFocusPolicy(Qt::StrongFocus);
    slider_->setFocusPolicy(Qt::StrongFocus);
    slider_->installEventFilter(this);
    connect(slider_, &QSlider::valueChanged, this, &SliderLengthField::dragged);
    connect(slider_, &QSlider::sliderReleased, this, &SliderLengthField::left);
    connect(field_, &LengthField::left, this, &SliderLengthField::left);
    connect(field_, &LengthField::unreadable, this, &SliderLengthField::unreadable);
    connect(field_, &LengthField::edited, this,
            [this](std::optional<double> mm, const QString& text) {
                placeSlider();
                emit edited(mm, text);
            });
}

void SliderLengthField::setRangeMm(double lowestMm, double highestMm, double stepMm) {
    lowestMm_ = lowestMm;
    stepMm_ = stepMm;
    const QSignalBlocker quiet(slider_);
    slider_->setRange(0, static_cast<int>(std::lround((highestMm - lowestMm) / stepMm)));
    slider_->setPageStep(10);
    placeSlider();
}

void SliderLengthField::setUnit(LengthUnit unit) { field_->setUnit(unit); }

void SliderLengthField::setValueMm(std::optional<double> mm) {
    field_->setValueMm(mm);
    placeSlider();
}

void SliderLengthField::setSuggestionMm(std::optional<double> mm) {
    suggestionMm_ = mm;
    field_->setSuggestionMm(mm);
    placeSlider();
}

void SliderLengthField::setNames(const QString& name) {
    field_->setAccessibleName(name);
    slider_->setAccessibleName(tr("%1, slider").arg(name));
}

std::optional<double> SliderLengthField::valueMm() const { return field_->valueMm(); }

LengthField& SliderLengthField::field() { return *field_; }

QSlider& SliderLengthField::slider() { return *slider_; }

void SliderLengthField::dragged(int steps) {
    const double mm = lowestMm_ + steps * stepMm_;
    field_->setValueMm(mm);
    emit edited(mm, field_->text());
    if (!slider_->isSliderDown()) emit left();  // one key or click is a change of its own
}

void SliderLengthField::placeSlider() {
    const auto mm = field_->valueMm() ? field_->valueMm() : suggestionMm_;
    if (!mm) return;
    const QSignalBlocker quiet(slider_);
    slider_->setValue(static_cast<int>(std::lround((*mm - lowestMm_) / stepMm_)));
}

// A wheel on its way down the card must not move a slider that nobody has taken.
bool SliderLengthField::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Wheel && !slider_->hasFocus()) {
        event->ignore();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace coutil
