#include "ui/comparing/compared_figures.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/comparing/figure_text.h"
#include "ui/words/alteration_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ComparedFigures)
};

bool isNothing(std::optional<double> mm) { return mm && std::abs(*mm) < kSmallestToldMm; }

QString withSide(const QString& name, PanelSide side) {
    if (side == PanelSide::both) return name;
    return name + QLatin1Char(' ') +
           sideName(side == PanelSide::left ? BodySide::left : BodySide::right);
}

QString seamName(const SeamComparison& seam) {
    const bool isSeam = seam.name.find('-') != std::string::npos;
    return withSide(isSeam ? QString::fromStdString(seam.name) : edgeName(seam.name), seam.side);
}

QString headA(const ComparedStates& states) {
    return states.areSides ? Words::tr("left") : Words::tr("A", "older of two revisions");
}

QString headB(const ComparedStates& states) {
    return states.areSides ? Words::tr("right") : Words::tr("B", "newer of two revisions");
}

FigureTable girths(const ComparedStates& states, LengthUnit unit) {
    FigureTable table;
    table.title = states.areSides
                      ? Words::tr("Girths as if both sides were so, %1").arg(unitName(unit))
                      : Words::tr("Girths, %1").arg(unitName(unit));
    table.columns = {Words::tr("level"), Words::tr("body"), headA(states), headB(states),
                     Words::tr("difference")};
    for (const LevelComparison& level : states.comparison.levels) {
        if (!level.aMm && !level.bMm) continue;  // over the top edge, or under the bottom
        table.rows.push_back(
            {levelName(level.level),
             {figureText(level.bodyMm, unit), figureText(level.aMm, unit),
              figureText(level.bMm, unit), differenceText(level.differenceMm, unit)},
             placeOnLevel(states, level.level),
             isNothing(level.differenceMm)});
    }
    return table;
}

// What is taken in reads as a minus: the garment became so much narrower there.
std::optional<double> wider(std::optional<double> takenIn) {
    return takenIn ? std::optional(-*takenIn) : std::nullopt;
}

// The levels at which any seam has an amount: others would be columns of dashes.
std::vector<std::string> seamLevels(const std::vector<SeamComparison>& seams) {
    std::vector<std::string> levels;
    for (std::size_t i = 0; !seams.empty() && i < seams.front().levels.size(); ++i) {
        if (std::ranges::any_of(seams, [&](const SeamComparison& seam) {
                return i < seam.levels.size() && seam.levels[i].amountMm;
            })) {
            levels.push_back(seams.front().levels[i].level);
        }
    }
    return levels;
}

FigureRow seamRow(const ComparedStates& states, const SeamComparison& seam,
                  const std::vector<std::string>& levels, LengthUnit unit) {
    FigureRow row{seamName(seam), {}, {}, true};
    for (const SeamAtLevel& level : seam.levels) {
        if (std::ranges::find(levels, level.level) == levels.end()) continue;
        row.figures << differenceText(wider(level.amountMm), unit);
        row.isUnchanged = row.isUnchanged && (!level.amountMm || isNothing(level.amountMm));
    }
    const std::optional<double> largest =
        seam.largest ? std::optional(seam.largest->amountMm) : std::nullopt;
    row.figures << differenceText(wider(largest), unit)
                << (seam.largest && !isNothing(largest)
                        ? differenceText(seam.largest->positionMm, unit)
                        : QString());
    row.isUnchanged = row.isUnchanged && isNothing(largest);
    row.place =
        placeOnSeam(states, seam.name, seam.side, seam.largest ? seam.largest->positionMm : 0);
    return row;
}

FigureTable seams(const ComparedStates& states, LengthUnit unit) {
    FigureTable table;
    const auto& all = states.comparison.seams;
    table.title = states.areSides
                      ? Words::tr("Seams: how much the right is wider, %1").arg(unitName(unit))
                      : Words::tr("Seams: how much B is wider, %1").arg(unitName(unit));
    table.columns = {Words::tr("seam")};
    if (all.empty()) return table;
    const std::vector<std::string> levels = seamLevels(all);
    for (const std::string& level : levels) table.columns << levelName(level);
    table.columns << Words::tr("most") << Words::tr("at");
    for (const SeamComparison& seam : all)
        table.rows.push_back(seamRow(states, seam, levels, unit));
    return table;
}

FigureTable edges(const ComparedStates& states, LengthUnit unit) {
    FigureTable table{Words::tr("Edges: how far they lie apart at most, %1").arg(unitName(unit)),
                      {Words::tr("edge"), Words::tr("apart"), Words::tr("at")},
                      {}};
    const auto& pairs = states.comparison.panels;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        for (const EdgeComparison& edge : pairs[i].edges) {
            const QString panel = withSide(QString::fromStdString(pairs[i].name),
                                           states.areSides ? PanelSide::both : pairs[i].side);
            table.rows.push_back(
                {Words::tr("%1, %2", "panel, edge").arg(panel, edgeName(edge.edge)),
                 {figureText(edge.largestMm, unit), edge.alongAMm && !isNothing(edge.largestMm)
                                                        ? differenceText(*edge.alongAMm, unit)
                                                        : QString()},
                 {static_cast<int>(i), edge.onA},
                 isNothing(edge.largestMm)});
        }
    }
    return table;
}

FigureTable edgeHeights(const ComparedStates& states, LengthUnit unit) {
    FigureTable table{Words::tr("Edge heights, %1").arg(unitName(unit)),
                      {Words::tr("where"), headA(states), headB(states), Words::tr("difference")},
                      {}};
    for (const EdgeHeightComparison& height : states.comparison.edgeHeights) {
        const bool isSeam = height.seam.find('-') != std::string::npos;
        const QString seam = withSide(
            isSeam ? QString::fromStdString(height.seam) : edgeName(height.seam), height.side);
        const auto at = height.aMm ? height.aMm : height.bMm;
        table.rows.push_back(
            {Words::tr("%1 at %2", "top or bottom edge, seam")
                 .arg(edgeName(std::string(keyOf(height.line))), seam),
             {differenceText(height.aMm, unit), differenceText(height.bMm, unit),
              differenceText(height.differenceMm, unit)},
             at ? placeOnSeam(states, height.seam, height.side, *at) : ComparedPlace{},
             isNothing(height.differenceMm)});
    }
    return table;
}

FigureTable areas(const ComparedStates& states, LengthUnit unit) {
    FigureTable table{Words::tr("Areas, %1").arg(squareUnitName(unit)),
                      {Words::tr("panel"), headA(states), headB(states), Words::tr("difference")},
                      {}};
    const auto& pairs = states.comparison.panels;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const auto& [a, b] = std::pair(pairs[i].areaAMm2, pairs[i].areaBMm2);
        const auto change = a && b ? std::optional(*b - *a) : std::nullopt;
        const Panel& panel = panelShown(states, pairs[i]);
        table.rows.push_back(
            {withSide(QString::fromStdString(pairs[i].name),
                      states.areSides ? PanelSide::both : pairs[i].side),
             {squareText(a, unit), squareText(b, unit), squareDifferenceText(change, unit)},
             {static_cast<int>(i), Point((panel.grain[0] + panel.grain[1]) / 2)},
             change && squareText(*change, unit) == QLatin1String("0")});
    }
    return table;
}

}  // namespace

std::vector<FigureTable> comparedFigures(const ComparedStates& states, LengthUnit unit) {
    std::vector<FigureTable> tables{girths(states, unit), seams(states, unit), edges(states, unit),
                                    edgeHeights(states, unit), areas(states, unit)};
    std::erase_if(tables, [](const FigureTable& table) { return table.rows.empty(); });
    return tables;
}

}  // namespace coutil
