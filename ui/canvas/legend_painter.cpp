// Pens of the scene, and what they stand for.
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "ui/canvas/ink_colours.h"
#include "ui/canvas/ruler.h"
#include "ui/canvas/scene_painter.h"

namespace coutil {

namespace {

// Curves above 1 px leave Qt's fast line path; only the sewing line, the pattern itself, is worth
// it.
constexpr double kInkPx = 1.6;
constexpr double kPencilPx = 1.25;
constexpr double kPalePx = 1.0;
const QList<qreal> kDots{1, 3};
constexpr double kSamplePx = 46;  // long enough for the longest dash pattern
constexpr double kGapPx = 8;

double rowHeightPx(const QFont& font) { return QFontMetricsF(font).height() + 4; }

// As far from the paper as it takes to be told from it, and from a line in force.
QColor pale(const QColor& colour, const TableColours& colours) {
    constexpr double kShare = 0.62;
    const auto mixed = [](double a, double b) { return kShare * a + (1 - kShare) * b; };
    return QColor::fromRgbF(static_cast<float>(mixed(colour.redF(), colours.paper.redF())),
                            static_cast<float>(mixed(colour.greenF(), colours.paper.greenF())),
                            static_cast<float>(mixed(colour.blueF(), colours.paper.blueF())));
}

void paintRow(QPainter& painter, const TableLook& look, const SceneLegendRow& row, double topPx) {
    const double high = rowHeightPx(look.font);
    const double wide = QFontMetricsF(look.font).horizontalAdvance(row.words);
    const QRectF words(look.area.right() - 12 - wide, topPx, wide + 1, high);
    const QRectF all = words.adjusted(-kSamplePx - kGapPx - 4, 0, 4, 0);
    painter.fillRect(all, look.colours.paper);
    painter.setPen(penOf(look, row.pen));
    const double middle = words.center().y();
    painter.drawLine(QPointF(all.left() + 4, middle), QPointF(words.left() - kGapPx, middle));
    painter.setPen(look.colours.text);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, row.words);
}

}  // namespace

QPen penOf(const TableLook& look, const ScenePen& pen) {
    const bool isGraphite = pen.ink == ScenePen::Ink::graphite ||
                            (pen.ink == ScenePen::Ink::scene && look.scene.isPencil);
    QPen made(isGraphite ? look.colours.graphite : look.colours.ink,
              isGraphite ? kPencilPx : kInkPx, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (pen.ink == ScenePen::Ink::revision) {
        const bool isDarkPaper = look.colours.paper.lightness() < look.colours.text.lightness();
        made = inkPen(inkLook(pen.revision, isDarkPaper), kInkPx);
    }
    if (pen.isDotted) made.setDashPattern(kDots);
    if (pen.isPale) {
        made.setColor(pale(made.color(), look.colours));
        made.setWidthF(kPalePx);
    }
    made.setCosmetic(true);
    return made;
}

double legendHeightPx(const TableScene& scene, const QFont& font) {
    if (scene.legend.empty()) return 0;
    const auto rows = static_cast<double>(scene.legend.size() + (scene.caption.isEmpty() ? 0 : 1));
    return rows * rowHeightPx(font);
}

void paintLegend(QPainter& painter, const TableLook& look) {
    if (look.scene.isEmpty()) return;
    painter.setFont(look.font);
    double top = look.area.top() + kTopRulerPx + 8;
    if (!look.scene.caption.isEmpty()) top += rowHeightPx(look.font);
    for (const SceneLegendRow& row : look.scene.legend) {
        paintRow(painter, look, row, top);
        top += rowHeightPx(look.font);
    }
}

}  // namespace coutil
