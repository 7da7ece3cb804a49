#include "ui/printing/compare_pages.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/comparing/chart_scale.h"
#include "ui/comparing/figure_text.h"
#include "ui/printing/compare_figure_pages.h"
#include "ui/printing/page_pen.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ComparePages)
};

constexpr double kTitleMm = 3.6;
constexpr double kSmallMm = 2.1;
constexpr double kTinyMm = 1.7;
constexpr double kLineMm = 0.35;
constexpr double kHairlineMm = 0.13;
constexpr double kSampleMm = 18;
constexpr double kSideWidthMm = 82;
constexpr double kHeadMm = 13;

// Names of levels find room at the left of the drawing.
constexpr double kNamesMm = 17;
constexpr double kAroundMm = 8;
// Levels of both closer than this on the paper have one line.
constexpr double kClosestLevelsMm = 0.5;
constexpr double kOverLineMm = 0.6;

struct Drawn {
    double scale = 1;
    Vector shift = Vector::Zero();
    [[nodiscard]] Point at(const Point& p) const { return p * scale + shift; }
    [[nodiscard]] Path at(Path path) const {
        for (Cubic& piece : path.pieces) {
            piece = {at(piece.p0), at(piece.p1), at(piece.p2), at(piece.p3)};
        }
        return path;
    }
};

Drawn fitted(const Box& box, const Box& room) {
    Drawn drawn;
    drawn.scale = std::min({room.widthMm() / box.widthMm(), room.heightMm() / box.heightMm(), 1.0});
    drawn.shift = (room.lowest + room.highest) / 2 - drawn.scale * (box.lowest + box.highest) / 2;
    return drawn;
}

void drawHead(PagePen& pen, const ComparedStates& states, const ComparePaper& paper) {
    const Box frame = pen.frame();
    const double top = frame.highest.y() - kTitleMm;
    pen.words(titleOf(states), {frame.lowest.x(), top}, kTitleMm, TextAnchor::left,
              frame.widthMm());
    QStringList under;
    if (paper.hasClient && !states.client.isEmpty()) under << states.client;
    if (!states.garment.isEmpty()) under << states.garment;
    if (!paper.madeOn.isEmpty()) under << Words::tr("printed %1").arg(paper.madeOn);
    pen.words(under.join(QStringLiteral(" \u00b7 ")), {frame.lowest.x(), top - 2.4 * kSmallMm},
              kSmallMm, TextAnchor::left, frame.widthMm());
}

void drawLevels(PagePen& pen, const ComparedStates& states, const ComparedLayout& layout,
                const Drawn& drawn) {
    const double left = layout.box.lowest.x() - kNamesMm / drawn.scale;
    const auto draw = [&](const QString& name, double heightMm, bool isUnder = false) {
        const Point from = drawn.at(Point(left, heightMm));
        pen.line(from, drawn.at(Point(layout.box.highest.x(), heightMm)), kHairlineMm,
                 SheetInk::level);
        pen.words(name, from + Vector(0, isUnder ? -kOverLineMm - kTinyMm : kOverLineMm), kTinyMm,
                  TextAnchor::left, kNamesMm - 1);
    };
    for (const double waist : layout.waistHeightMm) {
        for (const LevelComparison& level : states.comparison.levels) {
            const auto height = level.heightAMm ? level.heightAMm : level.heightBMm;
            if (!height || !(reachesLevel(states.a.pattern, level.level) ||
                             reachesLevel(states.b.pattern, level.level))) {
                continue;
            }
            const QString name = levelName(level.level);
            const double b = level.heightBMm.value_or(*height);
            if (drawn.scale * std::abs(b - *height) < kClosestLevelsMm) {
                draw(name, waist + *height);
                continue;
            }
            draw(Words::tr("%1 (A)", "level").arg(name), waist + *height, *height < b);
            draw(Words::tr("%1 (B)", "level").arg(name), waist + b, b < *height);
        }
    }
}

void drawPairs(PagePen& pen, const ComparedStates& states, const ComparedLayout& layout,
               const Drawn& drawn) {
    for (std::size_t i = 0; i < layout.pairs.size(); ++i) {
        const PairOnTable& pair = layout.pairs[i];
        const PanelComparison& compared = states.comparison.panels[i];
        if (!pair.a.isEmpty()) pen.path(drawn.at(pair.a), kLineMm, states.a);
        if (!pair.b.isEmpty()) pen.path(drawn.at(pair.b), kLineMm, states.b);
        const Panel& panel = panelShown(states, compared);
        const Point low = drawn.at(Point(panel.grain[0] + pair.shift));
        const Point high = drawn.at(Point(panel.grain[1] + pair.shift));
        pen.line(low, high, kHairlineMm, SheetInk::mark);
        QString name = QString::fromStdString(compared.name);
        if (!states.areSides && compared.side != PanelSide::both) {
            name += QLatin1Char(' ') +
                    sideName(compared.side == PanelSide::left ? BodySide::left : BodySide::right);
        }
        pen.words(name, Point(low - Vector(0, 1.5 * kSmallMm)), kTinyMm, TextAnchor::centre);
    }
}

// A sample of the line and its name.
void drawLegend(PagePen& pen, const ComparedState& state, const QString& name, const Point& at) {
    pen.path(straightPath(at + Vector(0, kSmallMm / 2), at + Vector(kSampleMm, kSmallMm / 2)),
             kLineMm, state);
    pen.words(name, at + Vector(kSampleMm + 2, 0), kSmallMm, TextAnchor::left,
              kSideWidthMm - kSampleMm - 2);
}

Path pathThrough(const QPolygonF& line, double paperHeightMm) {
    std::vector<Point> points;
    for (const QPointF& p : line) points.emplace_back(p.x(), paperHeightMm - p.y());
    return polylinePath(points);
}

// The chart's own y runs down; the page's runs up.
void drawChart(PagePen& pen, const ComparedStates& states, const Box& room, LengthUnit unit) {
    const GirthChart& chart = states.chart;
    if (chart.girths.empty()) return;
    const double height = pen.page().heightMm;
    const ChartScale scale(chart, QRectF(room.lowest.x() + 20, height - room.highest.y() + 5,
                                         room.widthMm() - 20, room.heightMm() - 11));
    const auto flip = [&](double x, double y) { return Point(x, height - y); };
    const QRectF& area = scale.area();
    pen.words(Words::tr("Girth against height, %1; dots: the body").arg(unitName(unit)),
              {room.lowest.x(), room.highest.y() - kSmallMm}, kSmallMm, TextAnchor::left,
              room.widthMm());
    double lastY = area.bottom() + 10;
    for (const BodyGirth& body : chart.body) {
        const double y = scale.y(body.heightMm);
        pen.line(flip(area.left(), y), flip(area.right(), y), kHairlineMm, SheetInk::level);
        const double x = scale.x(body.girthMm);
        pen.line(flip(x - 0.8, y), flip(x + 0.8, y), 1.6, SheetInk::mark);
        if (lastY - y < 1.6 * kTinyMm) continue;
        lastY = y;
        pen.words(levelName(body.level), flip(area.left() - 1, y + kTinyMm / 2), kTinyMm,
                  TextAnchor::right, 19);
    }
    for (const double girth : scale.girthTicksMm(unit, 12)) {
        const double x = scale.x(girth);
        pen.line(flip(x, area.bottom()), flip(x, area.bottom() - 1.2), kHairlineMm,
                 SheetInk::frame);
        pen.words(axisText(girth, unit), flip(x, area.bottom() + 1.6 * kTinyMm), kTinyMm,
                  TextAnchor::centre);
    }
    for (const QPolygonF& line : scale.lineOfA(chart)) {
        if (line.size() > 1) pen.path(pathThrough(line, height), kLineMm, states.a);
    }
    for (const QPolygonF& line : scale.lineOfB(chart)) {
        if (line.size() > 1) pen.path(pathThrough(line, height), kLineMm, states.b);
    }
    const QPolygonF body = scale.lineOfBody(chart);
    if (body.size() > 1) pen.path(pathThrough(body, height), kHairlineMm, SheetInk::mark);
}

QString scaleWords(double scale, double factor) {
    const QString size = QLocale().toString(1 / scale, 'f', 1);
    return factor == 1
               ? Words::tr("drawn at 1 : %1; not for cutting").arg(size)
               : Words::tr("drawn at 1 : %1, differences %2 times as large; not for cutting")
                     .arg(size)
                     .arg(qRound(factor));
}

SheetDrawing drawingPage(const ComparedStates& states, const ComparePaper& paper) {
    PagePen pen(paper.widthMm, paper.heightMm, paper.marginMm);
    pen.page().name = Words::tr("Drawing").toStdString();
    drawHead(pen, states, paper);
    const Box frame = pen.frame();
    const double top = frame.highest.y() - kHeadMm;
    const double sideLeft = frame.highest.x() - kSideWidthMm;
    Box room;
    room.include(Point(frame.lowest.x() + kNamesMm, frame.lowest.y() + 3 * kSmallMm));
    room.include(Point(sideLeft - kAroundMm, top));
    const ComparedLayout layout = comparedLayout(states, paper.factor);
    const Drawn drawn = fitted(layout.box, room);
    drawLevels(pen, states, layout, drawn);
    drawPairs(pen, states, layout, drawn);
    pen.words(scaleWords(drawn.scale, paper.factor), {frame.lowest.x(), frame.lowest.y() + 1},
              kSmallMm, TextAnchor::left, frame.widthMm() - kSideWidthMm);
    drawLegend(pen, states.a, lineNameA(states), {sideLeft, top - kSmallMm});
    drawLegend(pen, states.b, lineNameB(states), {sideLeft, top - 3.5 * kSmallMm});
    Box chart;
    chart.include(Point(sideLeft, frame.lowest.y() + 2));
    chart.include(Point(frame.highest.x(), std::min(top - 6 * kSmallMm, frame.lowest.y() + 112)));
    drawChart(pen, states, chart, paper.unit);
    return pen.page();
}

}  // namespace

std::vector<SheetDrawing> comparePages(const ComparedStates& states, const ComparePaper& paper) {
    std::vector<SheetDrawing> pages{drawingPage(states, paper)};
    std::vector<SheetDrawing> figures = figurePages(states, paper);
    std::ranges::move(figures, std::back_inserter(pages));
    return pages;
}

}  // namespace coutil
