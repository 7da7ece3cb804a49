#include "ui/benches/fit_shape_part.h"

#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/alterations/find_places.h"
#include "ui/benches/card_text.h"
#include "ui/benches/fit_fade_field.h"
#include "ui/benches/share_field.h"
#include "ui/words/alteration_places.h"

namespace coutil {

FitShapePart::FitShapePart(QWidget* parent)
    : QWidget(parent),
      heading_(cardHeading(QString())),
      form_(new QFormLayout),
      front_(new ShareField(tr("The panel in front gives"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading_);
    addRows();
    column->addLayout(form_);
    connect(front_, &ShareField::edited, this, [this](double share) {
        auto* shape = std::get_if<ShapeSeam>(&change_);
        if (shape == nullptr) return;
        ShapeSeam after = *shape;
        after.frontPart = share;
        emit edited(after, tr("share of the panels"), QStringLiteral("split"));
    });
    connect(front_, &ShareField::left, this, &FitShapePart::left);
}

void FitShapePart::addRows() {
    front_->setObjectName(QStringLiteral("frontPart"));
    form_->addRow(tr("Front panel gives"), front_);
    up_ = addFade(tr("Fades above over"), tr("to the edge"), "fadeUp", &ShapeSeam::up);
    down_ = addFade(tr("Fades below over"), tr("to the edge"), "fadeDown", &ShapeSeam::down);
    towardsFront_ = addFade(tr("Fades to the front over"), tr("to the centre"), "fadeFront",
                            &ReshapeEdge::towardsFront);
    towardsBack_ = addFade(tr("Fades to the back over"), tr("to the centre"), "fadeBack",
                           &ReshapeEdge::towardsBack);
}

template <class Kind>
FitFadeField* FitShapePart::addFade(const QString& words, const QString& toTheEnd, const char* name,
                                    Fade Kind::*fade) {
    auto* field = new FitFadeField(words, toTheEnd, name);
    form_->addRow(words, field);
    connect(field, &FitFadeField::edited, this, [this, fade, name](const Fade& typed) {
        const auto* shown = std::get_if<Kind>(&change_);
        if (shown == nullptr) return;
        Kind after = *shown;
        after.*fade = typed;
        emit edited(after, tr("where the change ends"), QLatin1String(name));
    });
    connect(field, &FitFadeField::left, this, &FitShapePart::left);
    return field;
}

void FitShapePart::showChange(const Change& change, LengthUnit unit) {
    change_ = change;
    const auto* seam = std::get_if<ShapeSeam>(&change);
    const auto* line = std::get_if<ReshapeEdge>(&change);
    const std::string place = seam != nullptr   ? seam->seam
                              : line != nullptr ? std::string(keyOf(line->line))
                                                : std::string();
    heading_->setText(tr("Change of %1").arg(seamName(place)));
    form_->setRowVisible(front_, seam != nullptr && !isCentreName(seam->seam));
    for (FitFadeField* field : {up_, down_}) form_->setRowVisible(field, seam != nullptr);
    for (FitFadeField* field : {towardsFront_, towardsBack_})
        form_->setRowVisible(field, line != nullptr);
    if (seam != nullptr) {
        front_->setShare(seam->frontPart);
        up_->showFade(seam->up, unit);
        down_->showFade(seam->down, unit);
    }
    if (line != nullptr) {
        towardsFront_->showFade(line->towardsFront, unit);
        towardsBack_->showFade(line->towardsBack, unit);
    }
}

}  // namespace coutil
