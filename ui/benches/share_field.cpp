#include "ui/benches/share_field.h"

#include <QSignalBlocker>
#include <QWheelEvent>
#include <cmath>

namespace coutil {

ShareField::ShareField(const QString& name, QWidget* parent) : QDoubleSpinBox(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(name);
    setDecimals(1);
    setSingleStep(1);
    setSuffix(tr(" %"));
    setRange(0, 100);
    setKeyboardTracking(true);
    setButtonSymbols(QAbstractSpinBox::NoButtons);
    setAlignment(Qt::AlignRight);
    connect(this, &QDoubleSpinBox::valueChanged, this, [this] { emit edited(share()); });
    connect(this, &QDoubleSpinBox::editingFinished, this, &ShareField::left);
}

void ShareField::setLimits(double lowest, double highest) {
    const QSignalBlocker quiet(this);
    setRange(lowest * 100, highest * 100);
}

// What is being typed stays as it is while it means the same.
void ShareField::setShare(double share) {
    const double steps = std::pow(10, decimals());
    const double rounded = std::round(share * 100 * steps) / steps;
    if (rounded == value()) return;
    const QSignalBlocker quiet(this);
    setValue(rounded);
}

double ShareField::share() const { return value() / 100; }

void ShareField::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QDoubleSpinBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

}  // namespace coutil
