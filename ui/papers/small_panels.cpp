#include "ui/papers/small_panels.h"

#include <QCoreApplication>
#include <QTransform>
#include <algorithm>

#include "ui/papers/page_writer.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FittingPaper)
};

constexpr double kSpaceMm = 26;       // between panels, before they are made small
constexpr double kLevelNamesMm = 24;  // to the left of the panels
constexpr double kRightMm = 12;       // half a name of an opening
constexpr double kLargestScale = 0.45;
constexpr double kSeamNameMm = 6;

// The left half, or the only one.
Pattern halfOf(const Pattern& pattern) {
    Pattern half;
    half.levels = pattern.levels;
    for (const Panel& panel : pattern.panels) {
        if (panel.side != PanelSide::right) half.panels.push_back(panel);
    }
    return half;
}

// A level above the top or below the bottom edge has no line anywhere.
bool isDrawn(const Pattern& half, const Level& level) {
    return std::ranges::any_of(half.panels, [&](const Panel& panel) {
        return std::ranges::any_of(panel.levels, [&](const LevelLine& line) {
            return line.level == level.name && line.front != line.back;
        });
    });
}

QTransform panelToPage(const Placement& placement, const Point& origin, double scale) {
    QTransform t;
    t.translate(origin.x() + placement.shift.x() * scale, origin.y() - placement.shift.y() * scale);
    t.scale(scale, -scale);
    return t;
}

// The names of seams and openings at the panels' feet, between the two edges that are sewn.
void nameSeams(PageWriter& page, const Pattern& half, const std::vector<QTransform>& toPage,
               double baseline) {
    for (std::size_t i = 0; i < half.panels.size(); ++i) {
        for (const Edge& edge : half.panels[i].edges) {
            if (!edge.waistMarkAtMm || edge.path.isEmpty()) continue;
            const Point low = edge.runsUp ? edge.path.start() : edge.path.end();
            const QPointF at = toPage[i].map(QPointF(low.x(), low.y()));
            const bool isOpening = edge.role != EdgeRole::seam;
            // A seam is named once, at its front panel, in the middle of the space.
            if (!isOpening && !edge.runsUp) continue;
            const double aside = kSpaceMm * toPage[i].m11() / 2;
            const double x = isOpening ? at.x() : at.x() + aside;
            page.line({at.x(), at.y() + 0.8}, {x, baseline - 3.4}, 0.12, SheetInk::mark);
            if (!isOpening && i + 1 < half.panels.size()) {
                for (const Edge& other : half.panels[i + 1].edges) {
                    if (other.name != edge.name) continue;
                    const Point foot = other.runsUp ? other.path.start() : other.path.end();
                    const QPointF there = toPage[i + 1].map(QPointF(foot.x(), foot.y()));
                    page.line({there.x(), there.y() + 0.8}, {x, baseline - 3.4}, 0.12,
                              SheetInk::mark);
                }
            }
            QString name = QString::fromStdString(edge.name);
            if (isOpening) {
                name = edgeName(edge.name);
            } else {
                name = name.mid(name.lastIndexOf(QLatin1Char(' ')) + 1);
            }
            page.text(name, {x, baseline}, letters::kText, 24, TextAnchor::centre);
        }
    }
}

}  // namespace

void drawSmallPanels(PageWriter& page, const Pattern& pattern, const QRectF& place) {
    const Pattern half = halfOf(pattern);
    const auto placements = masterPlacements(half, kSpaceMm);
    Box box;
    for (std::size_t i = 0; i < half.panels.size(); ++i) {
        box.include(boundsOf(placed(outlineOf(half.panels[i]), placements[i])));
    }
    if (box.isEmpty()) return;
    const double headMm = letters::kText * 3 + 2;
    const double roomWide = place.width() - kLevelNamesMm - kRightMm;
    const double roomHigh = place.height() - headMm - kSeamNameMm;
    const double scale =
        std::min({roomWide / box.widthMm(), roomHigh / box.heightMm(), kLargestScale});
    page.paragraph(Words::tr("One half of the mock-up from outside, front on the left, small and "
                             "NOT to scale: the numbers of panels and seams, and the levels to "
                             "measure at."),
                   place.left(), place.top(), place.width(), letters::kText);
    const Point origin(place.left() + kLevelNamesMm - box.lowest.x() * scale,
                       place.top() + headMm + box.highest.y() * scale);
    std::vector<QTransform> toPage;
    toPage.reserve(placements.size());
    for (const Placement& placement : placements) {
        toPage.push_back(panelToPage(placement, origin, scale));
    }
    for (std::size_t i = 0; i < half.panels.size(); ++i) {
        const Panel& panel = half.panels[i];
        page.drawing(outlineOf(panel), toPage[i], 0.35);
        for (const LevelLine& level : panel.levels) {
            page.drawing(straightPath(level.front, level.back), toPage[i], 0.15, SheetInk::level,
                         SheetDash::dashed);
        }
        const Box own = boundsOf(outlineOf(panel));
        const Point middle = (own.lowest + own.highest) / 2;
        page.text(QString::fromStdString(panel.name),
                  toPage[i].map(QPointF(middle.x(), middle.y())) + QPointF(0, 2), 5, 0,
                  TextAnchor::centre, SheetInk::frame);
    }
    double lastMm = -100;
    for (const Level& level : half.levels) {
        if (!isDrawn(half, level)) continue;
        const double y = origin.y() - level.heightMm * scale;
        if (y - lastMm < 3) continue;
        lastMm = y;
        page.text(levelName(level.name), {place.left(), y + 0.8}, letters::kSmall,
                  kLevelNamesMm - 2);
    }
    nameSeams(page, half, toPage, origin.y() - box.lowest.y() * scale + kSeamNameMm);
}

}  // namespace coutil
