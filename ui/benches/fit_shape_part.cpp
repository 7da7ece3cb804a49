#include "ui/benches/fit_shape_part.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/alterations/find_places.h"
#include "ui/benches/card_text.h"
#include "ui/benches/share_field.h"
#include "ui/fields/length_field.h"
#include "ui/words/alteration_places.h"

namespace coutil {

namespace {
constexpr double kUsualFadeMm = 60;
}

FitShapePart::FitShapePart(QWidget* parent)
    : QWidget(parent),
      heading_(cardHeading(QString())),
      form_(new QFormLayout),
      front_(new ShareField(tr("The panel in front gives"))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading_);
    front_->setObjectName(QStringLiteral("frontPart"));
    form_->addRow(tr("Front panel gives"), front_);
    up_ = addEnd(tr("Fades above over"), "fadeUp", &ShapeSeam::up);
    down_ = addEnd(tr("Fades below over"), "fadeDown", &ShapeSeam::down);
    column->addLayout(form_);
    connect(front_, &ShareField::edited, this, [this](double share) {
        ShapeSeam after = shape_;
        after.frontPart = share;
        emit edited(after, tr("share of the panels"), QStringLiteral("split"));
    });
    connect(front_, &ShareField::left, this, &FitShapePart::left);
}

FitShapePart::End FitShapePart::addEnd(const QString& words, const char* name,
                                       Fade ShapeSeam::*fade) {
    End end{new LengthField, new QCheckBox(tr("to the edge"))};
    end.over->setMayBeNegative(false);
    end.over->setAccessibleName(words);
    end.over->setObjectName(QLatin1String(name));
    end.toTheEdge->setAccessibleName(tr("%1: carried to the edge").arg(words));
    auto* row = new QHBoxLayout;
    row->addWidget(end.over, 1);
    row->addWidget(end.toTheEdge);
    form_->addRow(words, row);
    const auto take = [this, fade, name](std::optional<double> overMm) {
        ShapeSeam after = shape_;
        (after.*fade).overMm = overMm;
        emit edited(after, tr("where the change ends"), QLatin1String(name));
    };
    connect(end.over, &LengthField::edited, this, [take](std::optional<double> mm) {
        if (mm && *mm > 0) take(mm);
    });
    connect(end.over, &LengthField::left, this, &FitShapePart::left);
    connect(end.toTheEdge, &QCheckBox::clicked, this, [this, take](bool isCarried) {
        take(isCarried ? std::nullopt : std::optional(kUsualFadeMm));
        emit left();
    });
    return end;
}

void FitShapePart::showShape(const ShapeSeam& shape, LengthUnit unit) {
    shape_ = shape;
    heading_->setText(tr("Change of %1").arg(seamName(shape.seam)));
    form_->setRowVisible(0, !isCentreName(shape.seam));
    front_->setShare(shape.frontPart);
    for (const auto& [end, fade] : {std::pair(up_, shape.up), std::pair(down_, shape.down)}) {
        end.over->setUnit(unit);
        end.over->setEnabled(fade.overMm.has_value());
        end.over->setValueMm(fade.overMm);
        end.toTheEdge->setChecked(!fade.overMm);
    }
}

}  // namespace coutil
