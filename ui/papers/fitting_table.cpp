#include "ui/papers/fitting_table.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "core/geometry/tolerances.h"
#include "ui/papers/page_writer.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FittingPaper)
};

constexpr double kSeamWideMm = 20;
constexpr double kLevelWideMm = 62;
constexpr double kHeadMm = 12;
constexpr double kTallestRowMm = 7;
constexpr double kLeastRowMm = 5;

QString placeWords(const ReadingPlace& place, LengthUnit unit) {
    const bool isEnd = place.level == "top" || place.level == "bottom";
    QString level = isEnd ? edgeName(place.level) : levelName(place.level);
    const double off = std::abs(place.positionMm);
    if (off < tolerance::kCheckFlatnessMm) return level;
    // To the half centimetre or the quarter inch: a client looks for the place with a tape.
    const double stepMm = unit == LengthUnit::inch ? 25.4 / 4 : 5;
    const QString away = lengthText(std::round(off / stepMm) * stepMm, unit);
    return place.positionMm > 0 ? Words::tr("%1, %2 above the waist").arg(level, away)
                                : Words::tr("%1, %2 below the waist").arg(level, away);
}

struct Columns {
    double left;
    double level;
    std::array<double, 5> cells;  // edges of the four cells
};

Columns columnsOf(const PageWriter& page) {
    Columns c{page.leftMm(), page.leftMm() + kSeamWideMm, {}};
    const double from = c.level + kLevelWideMm;
    for (std::size_t i = 0; i < c.cells.size(); ++i) {
        c.cells[i] = from + (page.rightMm() - from) * static_cast<double>(i) / 4;
    }
    return c;
}

double writeHead(PageWriter& page, const Columns& c, LengthUnit unit, double top) {
    const double first = top + 4.5;
    const double second = top + kHeadMm - 2;
    page.text(Words::tr("Seam"), {c.left + 1, second}, letters::kText, kSeamWideMm - 2);
    page.text(Words::tr("Measured at"), {c.level + 1, second}, letters::kText, kLevelWideMm - 2);
    const double wide = c.cells[1] - c.cells[0];
    const std::array sides{Words::tr("left, in %1").arg(unitName(unit)),
                           Words::tr("right, in %1").arg(unitName(unit))};
    const std::array kinds{Words::tr("pinned"), Words::tr("opened")};
    for (std::size_t i = 0; i < 4; ++i) {
        if (i % 2 == 0) {
            page.text(sides[i / 2], {c.cells[i + 1], first}, letters::kText, 2 * wide - 2,
                      TextAnchor::centre);
        }
        page.text(kinds[i % 2], {c.cells[i] + wide / 2, second}, letters::kText, wide - 2,
                  TextAnchor::centre);
    }
    page.line({c.left, top}, {page.rightMm(), top}, 0.35);
    return top + kHeadMm;
}

void closeColumns(PageWriter& page, const Columns& c, double top, double bottom) {
    page.line({c.left, bottom}, {page.rightMm(), bottom}, 0.35);
    for (const double x : {c.left, c.level, page.rightMm()}) page.line({x, top}, {x, bottom}, 0.2);
    for (std::size_t i = 0; i < 4; ++i) {
        page.line({c.cells[i], i % 2 == 0 ? top : top + kHeadMm / 2}, {c.cells[i], bottom},
                  i % 2 == 0 ? 0.35 : 0.15);
    }
}

}  // namespace

std::vector<ReadingPlace> readingPlaces(const Pattern& pattern) {
    std::vector<ReadingPlace> places;
    std::set<std::string> told;
    for (const Seam& seam : pattern.seams) {
        if (!told.insert(seam.name).second) continue;
        const Edge& edge = edgeAt(pattern, seam.front);
        if (!edge.waistMarkAtMm || edge.path.isEmpty()) continue;
        const double waist = *edge.waistMarkAtMm;
        for (const LevelLine& level : pattern.panels[seam.front.panel].levels) {
            // Seam edges of the front panel are at its back.
            const ClosestPlace at = closestOn(edge.path, level.back);
            if (at.distanceMm > tolerance::kCheckFlatnessMm) continue;
            const double along = lengthToMm(edge.path, at.position) - waist;
            places.push_back({seam.name, level.level, edge.runsUp ? along : -along});
        }
        const SeamLengths ends = seamLengthsOf(edge);
        places.push_back({seam.name, "top", ends.aboveWaistMm});
        places.push_back({seam.name, "bottom", -ends.belowWaistMm});
        const auto first = std::ranges::find(places, seam.name, &ReadingPlace::seam);
        std::sort(first, places.end(),
                  [](const auto& x, const auto& y) { return x.positionMm > y.positionMm; });
    }
    return places;
}

double writeFittingTable(PageWriter& page, const Pattern& pattern, LengthUnit unit, double topMm,
                         double reservedMm) {
    const auto places = readingPlaces(pattern);
    const Columns c = columnsOf(page);
    const double room = page.bottomMm() - topMm - kHeadMm - reservedMm;
    const double row = std::clamp(room / std::max<double>(1, static_cast<double>(places.size())),
                                  kLeastRowMm, kTallestRowMm);
    double top = topMm;
    double y = writeHead(page, c, unit, top);
    std::string seam;
    for (const ReadingPlace& place : places) {
        if (y + row > page.bottomMm()) {
            closeColumns(page, c, top, y);
            page.newPage();
            top = page.topMm();
            y = writeHead(page, c, unit, top);
            seam.clear();
        }
        const bool isFirst = place.seam != seam;
        page.line({isFirst ? c.left : c.level, y}, {page.rightMm(), y}, isFirst ? 0.3 : 0.1);
        const double baseline = y + row / 2 + letters::kText / 2;
        if (isFirst) {
            page.text(QString::fromStdString(place.seam), {c.left + 1.5, baseline},
                      letters::kHeading, kSeamWideMm - 3);
        }
        page.text(placeWords(place, unit), {c.level + 1.5, baseline}, letters::kSmall,
                  kLevelWideMm - 3);
        seam = place.seam;
        y += row;
    }
    closeColumns(page, c, top, y);
    return y;
}

double writeLacingGap(PageWriter& page, const Pattern& pattern, LengthUnit unit, double topMm) {
    double y = topMm;
    if (page.bottomMm() - y < 30) {
        page.newPage();
        y = page.topMm();
    }
    y = page.paragraph(Words::tr("How wide does the lacing stand open, in %1?").arg(unitName(unit)),
                       page.leftMm(), y, page.roomMm(), letters::kText);
    QStringList places{edgeName("top")};
    for (const LevelLine& level : pattern.panels.back().levels) {
        if (level.front != level.back) places << levelName(level.level);
    }
    places << edgeName("bottom");
    const double wide = page.roomMm() / static_cast<double>(places.size());
    double x = page.leftMm();
    for (const QString& place : places) {
        page.box({x, y, wide, 12}, 0.15);
        page.text(place, {x + 1, y + 3.2}, letters::kSmall, wide - 2);
        x += wide;
    }
    return y + 12;
}

}  // namespace coutil
