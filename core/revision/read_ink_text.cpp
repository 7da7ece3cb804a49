#include <algorithm>
#include <ranges>

#include "core/measurements/measurement.h"
#include "core/revision/ink.h"
#include "core/revision/ink_fields.h"
#include "core/revision/ink_grid.h"
#include "core/revision/ink_text.h"

namespace coutil {
namespace {

constexpr std::array kRoles{EdgeRole::seam,    EdgeRole::top,      EdgeRole::bottom,
                            EdgeRole::opening, EdgeRole::fold,     EdgeRole::neck,
                            EdgeRole::armhole, EdgeRole::shoulder, EdgeRole::dartLeg};

// One of two words.
bool isFirstOf(InkFields& fields, std::string_view first, std::string_view second) {
    const std::string_view word = fields.word();
    if (word != first && word != second) fields.spoil();
    return word == first;
}

Path pathOf(InkFields& fields) {
    std::int64_t x = 0;
    std::int64_t y = 0;
    const auto next = [&] {
        x += fields.whole();
        y += fields.whole();
        if (std::max(std::abs(x), std::abs(y)) > kMostInkSteps) fields.spoil();
        return Point(mmOfInkSteps(x), mmOfInkSteps(y));
    };
    Path path;
    if (fields.isAtLineEnd()) return path;
    Point start = next();
    while (fields.isSound() && !fields.isAtLineEnd()) {
        Cubic& piece = path.pieces.emplace_back();
        piece.p0 = start;
        piece.p1 = next();
        piece.p2 = next();
        piece.p3 = start = next();
    }
    return path;
}

Edge edgeOf(InkFields& fields) {
    Edge edge;
    edge.name = fields.name();
    const std::string_view key = fields.word();
    const auto* const role =
        std::ranges::find_if(kRoles, [&](EdgeRole each) { return keyOf(each) == key; });
    if (role == kRoles.end()) {
        fields.spoil();
    } else {
        edge.role = *role;
    }
    edge.runsUp = isFirstOf(fields, ink_text::kUp, ink_text::kDown);
    edge.waistMarkAtMm = fields.mmOrNone();
    edge.path = pathOf(fields);
    return edge;
}

Panel panelOf(InkFields& fields) {
    Panel panel;
    panel.name = fields.name();
    const std::string_view side = fields.word();
    const auto* const place = std::ranges::find(ink_text::kSides, side);
    if (place == ink_text::kSides.end()) {
        fields.spoil();
    } else {
        panel.side = static_cast<PanelSide>(place - ink_text::kSides.begin());
    }
    panel.isOnFold = isFirstOf(fields, ink_text::kFold, ink_text::kLoose);
    for (Point& point : panel.grain) point = fields.point();
    return panel;
}

EdgeRef edgeRefOf(InkFields& fields) {
    const auto panel = static_cast<std::size_t>(fields.whole());
    return {panel, static_cast<std::size_t>(fields.whole())};
}

Seam seamOf(InkFields& fields) {
    Seam seam;
    seam.name = fields.name();
    seam.front = edgeRefOf(fields);
    seam.back = edgeRefOf(fields);
    seam.easeMm = fields.mm();
    return seam;
}

Level levelOf(InkFields& fields) {
    Level level;
    level.name = fields.name();
    level.heightMm = fields.mm();
    level.bodyMm = fields.mmOrNone();
    level.targetMm = fields.mmOrNone();
    level.patternMm = fields.mmOrNone();
    level.lacingGapMm = fields.mm();
    return level;
}

Measurement measurementOf(InkFields& fields) {
    const std::optional<Measurement> found = measurementNamed(std::string(fields.word()));
    if (!found) fields.spoil();
    return found.value_or(Measurement{});
}

Estimate estimateOf(InkFields& fields) {
    Estimate estimate;
    estimate.id = measurementOf(fields);
    estimate.valueMm = fields.mm();
    estimate.sdMm = fields.mm();
    estimate.source = fields.name();
    while (fields.isSound() && !fields.isAtLineEnd())
        estimate.from.push_back(measurementOf(fields));
    return estimate;
}

LevelLine levelLineOf(InkFields& fields) {
    LevelLine line;
    line.level = fields.name();
    line.front = fields.point();
    line.back = fields.point();
    return line;
}

void takeRecord(InkFields& fields, Pattern& pattern) {
    const std::string_view kind = fields.lineWord();
    if (kind == ink_text::kPanel) {
        pattern.panels.push_back(panelOf(fields));
    } else if (kind == ink_text::kEdge && !pattern.panels.empty()) {
        pattern.panels.back().edges.push_back(edgeOf(fields));
    } else if (kind == ink_text::kLine && !pattern.panels.empty()) {
        pattern.panels.back().levels.push_back(levelLineOf(fields));
    } else if (kind == ink_text::kSeam) {
        pattern.seams.push_back(seamOf(fields));
    } else if (kind == ink_text::kLevel) {
        pattern.levels.push_back(levelOf(fields));
    } else if (kind == ink_text::kEstimate) {
        pattern.estimates.push_back(estimateOf(fields));
    } else {
        fields.spoil();
    }
    fields.lineEnd();
}

bool isOn(const Pattern& pattern, const EdgeRef& ref) {
    return ref.panel < pattern.panels.size() && ref.edge < pattern.panels[ref.panel].edges.size();
}

}  // namespace

Outcome<Pattern> patternFromInkText(std::string_view text) {
    InkFields fields(text);
    Pattern pattern;
    fields.take(ink_text::kHead);
    fields.take(ink_text::kLacing);
    pattern.lacingGapMm = fields.mm();
    fields.lineEnd();
    while (fields.isSound() && !fields.isAtEnd()) takeRecord(fields, pattern);
    const bool areSeamsOn = std::ranges::all_of(pattern.seams, [&](const Seam& seam) {
        return isOn(pattern, seam.front) && isOn(pattern, seam.back);
    });
    if (fields.isSound() && areSeamsOn) return pattern;
    Problem problem;
    problem.code = ProblemCode::fileDamaged;
    return problem;
}

}  // namespace coutil
