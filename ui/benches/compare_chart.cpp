#include "ui/benches/compare_chart.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <utility>

#include "ui/canvas/ink_colours.h"
#include "ui/canvas/table_colours.h"
#include "ui/comparing/figure_text.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr double kStepMm = 5;
constexpr double kWideStepMm = 20;
constexpr double kBodyPx = 3;
constexpr double kLinePx = 1.6;
constexpr double kClosestTicksPx = 46;

QPen penOf(const ComparedState& state, bool isDarkTheme) {
    if (state.revision > 0) return inkPen(inkLook(state.revision, isDarkTheme), kLinePx);
    QPen pen(tableColours(isDarkTheme).graphite, kLinePx);
    if (state.isDotted) pen.setDashPattern({1, 3});
    return pen;
}

}  // namespace

CompareChart::CompareChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Girth against height"));
}

void CompareChart::showStates(std::shared_ptr<const ComparedStates> states, LengthUnit unit) {
    states_ = std::move(states);
    unit_ = unit;
    read(std::nullopt);
    update();
}

void CompareChart::read(std::optional<double> heightMm) {
    if (heightMm && states_ && !states_->chart.girths.empty()) {
        const auto& girths = states_->chart.girths;
        heightMm = std::clamp(*heightMm, girths.front().heightMm, girths.back().heightMm);
    }
    heightMm_ = heightMm;
    setAccessibleDescription(reading());
    emit heightRead(heightMm_);
    update();
}

QString CompareChart::reading() const {
    if (!states_ || !heightMm_) return {};
    const ChartReading at = readingAt(states_->chart, *heightMm_);
    const QString place = placeText(at.heightMm, unit_);
    const QString body = figureText(at.bodyMm, unit_);
    const QString a = figureText(at.aMm, unit_);
    const QString b = figureText(at.bMm, unit_);
    return states_->areSides ? tr("%1: body %2, left %3, right %4", "height").arg(place, body, a, b)
                             : tr("%1: body %2, A %3, B %4", "height").arg(place, body, a, b);
}

// Level names at the left, girths at the foot, the reading over it.
ChartScale CompareChart::scale() const {
    const QFontMetricsF metrics(font());
    double names = 0;
    for (const BodyGirth& body : states_->chart.body) {
        names = std::max(names, metrics.horizontalAdvance(levelName(body.level)));
    }
    const double high = metrics.height();
    return {states_->chart, QRectF(rect()).adjusted(names + 8, high + 6, -8, -high - 6)};
}

void CompareChart::paintEvent(QPaintEvent*) {
    if (!states_ || states_->chart.girths.empty()) return;
    QPainter painter(this);
    const ChartScale drawn = scale();
    const TableColours& colours = tableColours(isDark(palette()));
    painter.fillRect(drawn.area(), colours.paper);
    paintAxes(painter, drawn);
    painter.setRenderHint(QPainter::Antialiasing);
    paintLines(painter, drawn);
    paintReading(painter, drawn);
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(palette().color(QPalette::Highlight));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
}

void CompareChart::paintAxes(QPainter& painter, const ChartScale& drawn) const {
    const TableColours& colours = tableColours(isDark(palette()));
    const QRectF& area = drawn.area();
    const double high = QFontMetricsF(font()).height();
    double lastName = area.bottom() + high;  // names that would touch give way
    for (const BodyGirth& body : states_->chart.body) {
        const double y = drawn.y(body.heightMm);
        painter.setPen(body.heightMm == 0 ? colours.waist : colours.level);
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        if (lastName - y < high) continue;
        lastName = y;
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(QRectF(0, y - high / 2, area.left() - 6, high),
                         Qt::AlignRight | Qt::AlignVCenter, levelName(body.level));
    }
    for (const double girth : drawn.girthTicksMm(unit_, kClosestTicksPx)) {
        const double x = drawn.x(girth);
        painter.setPen(colours.sheet);
        painter.drawLine(QPointF(x, area.bottom() - 4), QPointF(x, area.bottom()));
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(QRectF(x - 40, area.bottom() + 3, 80, high), Qt::AlignCenter,
                         axisText(girth, unit_));
    }
}

void CompareChart::paintLines(QPainter& painter, const ChartScale& drawn) const {
    const bool isDarkTheme = isDark(palette());
    const TableColours& colours = tableColours(isDarkTheme);
    painter.setBrush(colours.text);
    painter.setPen(QPen(colours.level, 1));
    const QPolygonF body = drawn.lineOfBody(states_->chart);
    painter.drawPolyline(body);
    painter.setPen(Qt::NoPen);
    for (const QPointF& level : body) painter.drawEllipse(level, kBodyPx, kBodyPx);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(penOf(states_->a, isDarkTheme));
    for (const QPolygonF& line : drawn.lineOfA(states_->chart)) painter.drawPolyline(line);
    painter.setPen(penOf(states_->b, isDarkTheme));
    for (const QPolygonF& line : drawn.lineOfB(states_->chart)) painter.drawPolyline(line);
}

void CompareChart::paintReading(QPainter& painter, const ChartScale& drawn) const {
    const QRectF over(0, 0, width(), drawn.area().top() - 2);
    painter.setPen(palette().color(QPalette::WindowText));
    if (!heightMm_) {
        painter.drawText(over, Qt::AlignCenter, tr("dots: the body; point at a height to read it"));
        return;
    }
    painter.drawText(over, Qt::AlignCenter, reading());
    painter.setPen(QPen(tableColours(isDark(palette())).halo, 1.4));
    const double y = drawn.y(*heightMm_);
    painter.drawLine(QPointF(drawn.area().left(), y), QPointF(drawn.area().right(), y));
}

void CompareChart::mouseMoveEvent(QMouseEvent* event) {
    if (states_) read(scale().heightMmAt(event->position().y()));
}

void CompareChart::leaveEvent(QEvent*) {
    if (!hasFocus()) read(std::nullopt);
}

void CompareChart::keyPressEvent(QKeyEvent* event) {
    const bool isUp = event->key() == Qt::Key_Up;
    if (!isUp && event->key() != Qt::Key_Down) {
        QWidget::keyPressEvent(event);
        return;
    }
    const double step = event->modifiers() & Qt::ShiftModifier ? kWideStepMm : kStepMm;
    read(heightMm_.value_or(0) + (isUp ? step : -step));
}

}  // namespace coutil
