#include "ui/benches/tape_figure.h"

#include <QPainter>
#include <algorithm>

#include "ui/benches/tape_line.h"
#include "ui/fields/text_colours.h"

namespace coutil {

namespace {

constexpr double kBodyPx = 1.3;
constexpr double kDetailPx = 0.9;
constexpr double kTapePx = 2.6;
constexpr double kEndPx = 3.2;

// The frame of the drawing in the middle of the place; y is turned over.
QTransform placing(const QRectF& frame, const QRectF& place) {
    const double scale = std::min(place.width() / frame.width(), place.height() / frame.height());
    QTransform transform;
    transform.translate(place.center().x(), place.center().y());
    transform.scale(scale, -scale);
    transform.translate(-frame.center().x(), -frame.center().y());
    return transform;
}

// Widths are pixels whatever scale the painter has.
void stroke(QPainter& painter, const QPainterPath& path, QPen pen) {
    pen.setCosmetic(true);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
}

void paintTape(QPainter& painter, const TapeLine& line, const QTransform& transform,
               const FigureColours& colours) {
    stroke(painter, transform.map(line.levels), QPen(colours.tape, kDetailPx, Qt::DotLine));
    stroke(painter, transform.map(line.hidden), QPen(colours.tape, kDetailPx + 0.3, Qt::DashLine));
    const QPainterPath seen = transform.map(line.seen);
    stroke(painter, seen, QPen(colours.tape, kTapePx, Qt::SolidLine, Qt::RoundCap));
    if (!line.hasEnds) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.tape);
    const double end = kEndPx / std::max(painter.transform().m11(), 1e-3);
    painter.drawEllipse(seen.pointAtPercent(0), end, end);
    painter.drawEllipse(seen.pointAtPercent(1), end, end);
}

}  // namespace

void paintTapeFigure(QPainter& painter, const QRectF& place, std::optional<Measurement> shown,
                     const FigureColours& colours) {
    const TapeLine line = shown ? tapeLineOf(*shown) : TapeLine{};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(place, Qt::IntersectClip);
    const QTransform transform = placing(figureFrame(line.view), place);
    const auto round = [](const QColor& colour, double px) {
        return QPen(colour, px, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    };
    stroke(painter, transform.map(bodyDetails(line.view)), round(colours.details, kDetailPx));
    stroke(painter, transform.map(bodyOutline(line.view)), round(colours.body, kBodyPx));
    if (shown) paintTape(painter, line, transform, colours);
    painter.restore();
}

TapeFigure::TapeFigure(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void TapeFigure::showTape(std::optional<Measurement> id) {
    shown_ = id;
    update();
}

void TapeFigure::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QColor text = palette().color(QPalette::WindowText);
    paintTapeFigure(painter, QRectF(rect()).adjusted(2, 2, -2, -2), shown_,
                    {text, quietColour(palette()), tapeColour(palette())});
}

}  // namespace coutil
