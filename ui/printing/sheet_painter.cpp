#include "ui/printing/sheet_painter.h"

#include <QColor>
#include <QFont>
#include <QFontMetricsF>
#include <QPainterPath>
#include <QPen>
#include <numbers>

#include "core/geometry/tolerances.h"
#include "ui/canvas/ink_colours.h"

namespace coutil {
namespace {

// Letters are set at this size and scaled, since fonts come only in whole units.
constexpr int kFontUnits = 100;

QColor colourOf(SheetInk ink) {
    switch (ink) {
        case SheetInk::level:
            return {110, 110, 110};
        case SheetInk::frame:
            return {140, 140, 140};
        case SheetInk::mark:
            return {70, 70, 70};
        case SheetInk::pale:
            return {222, 222, 222};
        case SheetInk::cutting:
        case SheetInk::sewing:
        case SheetInk::grain:
        case SheetInk::notch:
        case SheetInk::text:
            break;
    }
    return {0, 0, 0};
}

// A straight piece that runs at even speed, as straightCubic() makes them.
bool isStraight(const Cubic& c) {
    const Vector third = (c.p3 - c.p0) / 3;
    return (c.p0 + third - c.p1).norm() < tolerance::kSamePointMm / 100 &&
           (c.p3 - third - c.p2).norm() < tolerance::kSamePointMm / 100;
}

class PagePainter {
  public:
    PagePainter(QPainter& painter, const SheetDrawing& drawing)
        : painter_(painter), drawing_(drawing) {
        QFont font;
        font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Sans Serif")});
        font.setPixelSize(kFontUnits);
        font.setHintingPreference(QFont::PreferNoHinting);
        painter_.setFont(font);
        capitalUnits_ = QFontMetricsF(font).capHeight();
    }

    void paint() {
        // Pale ink first: it lies under the lines.
        for (const bool isPale : {true, false}) {
            for (const auto& lettering : drawing_.letterings) {
                if ((lettering.ink == SheetInk::pale) == isPale) paint(lettering);
            }
            if (!isPale) continue;
            for (const auto& stroke : drawing_.strokes) paint(stroke);
        }
    }

  private:
    // Our y is up, the painter's down.
    [[nodiscard]] QPointF at(const Point& p) const { return {p.x(), drawing_.heightMm - p.y()}; }

    void clipToFrame(bool isClipped) {
        const double margin = isClipped ? drawing_.marginMm : 0;
        painter_.setClipRect(
            QRectF(margin, margin, drawing_.widthMm - 2 * margin, drawing_.heightMm - 2 * margin));
    }

    void paint(const SheetStroke& stroke) {
        if (stroke.path.isEmpty()) return;
        QPainterPath path(at(stroke.path.start()));
        for (const Cubic& c : stroke.path.pieces) {
            if (isStraight(c)) {
                path.lineTo(at(c.p3));
            } else {
                path.cubicTo(at(c.p1), at(c.p2), at(c.p3));
            }
        }
        QPen pen(colourOf(stroke.ink), stroke.widthMm, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
        // Dashes are counted in line widths; these are in millimetres.
        if (stroke.dash == SheetDash::dashed) {
            pen.setDashPattern({3 / stroke.widthMm, 2 / stroke.widthMm});
        }
        if (stroke.dash == SheetDash::dotted) {
            pen.setDashPattern({0.6 / stroke.widthMm, 1.4 / stroke.widthMm});
        }
        if (stroke.revision > 0) pen = inkPen(inkLookOnPaper(stroke.revision), stroke.widthMm);
        clipToFrame(stroke.isClippedToFrame);
        painter_.setPen(pen);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPath(path);
    }

    void paint(const SheetLettering& lettering) {
        const QString text = QString::fromStdString(lettering.text);
        if (text.isEmpty()) return;
        double scale = lettering.heightMm / capitalUnits_;
        const double width = QFontMetricsF(painter_.font()).horizontalAdvance(text);
        if (lettering.roomMm > 0 && width * scale > lettering.roomMm) {
            scale = lettering.roomMm / width;
        }
        double left = 0;
        if (lettering.anchor == TextAnchor::centre) left = -width / 2;
        if (lettering.anchor == TextAnchor::right) left = -width;
        clipToFrame(true);
        painter_.save();
        painter_.setPen(lettering.revision > 0 ? inkLookOnPaper(lettering.revision).colour
                                               : colourOf(lettering.ink));
        painter_.translate(at(lettering.at));
        painter_.rotate(-lettering.turnRad * 180 / std::numbers::pi);
        painter_.scale(scale, scale);
        painter_.drawText(QPointF(left, 0), text);
        painter_.restore();
    }

    QPainter& painter_;
    const SheetDrawing& drawing_;
    double capitalUnits_ = 1;
};

}  // namespace

void paintSheet(QPainter& painter, const SheetDrawing& drawing) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    PagePainter(painter, drawing).paint();
    painter.restore();
}

}  // namespace coutil
