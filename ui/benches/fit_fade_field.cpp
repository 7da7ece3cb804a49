#include "ui/benches/fit_fade_field.h"

#include <QCheckBox>
#include <QHBoxLayout>

#include "ui/fields/length_field.h"

namespace coutil {

namespace {
constexpr double kUsualFadeMm = 60;
}

FitFadeField::FitFadeField(const QString& spoken, const QString& toTheEnd, const char* name,
                           QWidget* parent)
    : QWidget(parent), over_(new LengthField), toTheEnd_(new QCheckBox(toTheEnd)) {
    over_->setMayBeNegative(false);
    over_->setAccessibleName(spoken);
    over_->setObjectName(QLatin1String(name));
    toTheEnd_->setAccessibleName(
        tr("%1: carried %2", "Fades above over: carried to the edge").arg(spoken, toTheEnd));
    toTheEnd_->setObjectName(QLatin1String(name) + QStringLiteral("Carried"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(over_, 1);
    row->addWidget(toTheEnd_);
    connect(over_, &LengthField::edited, this, [this](std::optional<double> mm) {
        if (mm && *mm > 0) emit edited({mm});
    });
    connect(over_, &LengthField::left, this, &FitFadeField::left);
    connect(toTheEnd_, &QCheckBox::clicked, this, [this](bool isCarried) {
        emit edited({isCarried ? std::nullopt : std::optional(kUsualFadeMm)});
        emit left();
    });
}

void FitFadeField::showFade(const Fade& fade, LengthUnit unit) {
    over_->setUnit(unit);
    over_->setEnabled(fade.overMm.has_value());
    over_->setValueMm(fade.overMm);
    toTheEnd_->setChecked(!fade.overMm);
}

}  // namespace coutil
