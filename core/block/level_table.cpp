#include "core/block/level_table.h"

#include <algorithm>
#include <array>
#include <string>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

struct LevelSource {
    LevelId id{};
    Measurement girth{};
    std::optional<Measurement> height;  // nothing: the waist itself
    double direction = 1;               // heights below the waist are measured downwards
    bool isNeeded = false;
};

constexpr std::array kSources{
    LevelSource{LevelId::hip, Measurement::hipGirth, Measurement::waistToHip, -1, false},
    LevelSource{LevelId::highHip, Measurement::topHipGirth, Measurement::waistToHighHip, -1, false},
    LevelSource{LevelId::waist, Measurement::waistGirth, std::nullopt, 1, true},
    LevelSource{LevelId::underBust, Measurement::underBustGirth, Measurement::waistToUnderBust, 1,
                true},
    LevelSource{LevelId::bust, Measurement::bustGirth, Measurement::waistToBust, 1, true},
    LevelSource{LevelId::aboveBust, Measurement::upperChestGirth, Measurement::waistToArmpit, 1,
                false},
};

// Levels nearer than this can't each have a girth of their own: a tape is wider.
constexpr double kLeastBetweenLevelsMm = 10;
// An armpit nearer to the bust than this gives no level above the bust.
constexpr double kLeastAboveBustMm = 20;

bool isMeasured(const Body& body, const LevelSource& source) {
    return body.has(source.girth) && (!source.height || body.has(*source.height));
}

Problem missing(Measurement id) {
    return {.code = ProblemCode::measurementMissing, .subject = std::string(keyOf(id))};
}

void addMissing(const Body& body, const LevelSource& source, std::vector<Problem>& problems) {
    if (!body.has(source.girth)) problems.push_back(missing(source.girth));
    if (source.height && !body.has(*source.height)) problems.push_back(missing(*source.height));
}

LevelRow rowOf(const Body& body, const Style& style, const LevelSource& source) {
    LevelRow row{.id = source.id};
    if (source.height) row.heightMm = source.direction * body.valueMm(*source.height);
    row.bodyMm = body.valueMm(source.girth);
    row.targetMm = row.bodyMm + easeMm(style, source.id);
    row.gapMm = lacingGapMm(style, source.id);
    return row;
}

void checkOrder(const std::vector<LevelRow>& rows, std::vector<Problem>& problems) {
    for (std::size_t i = 1; i < rows.size(); ++i) {
        const double apartMm = rows[i].heightMm - rows[i - 1].heightMm;
        if (apartMm >= kLeastBetweenLevelsMm) continue;
        problems.push_back({.code = ProblemCode::levelOrderWrong,
                            .subject = std::string(keyOf(rows[i].id)),
                            .detail = std::string(keyOf(rows[i - 1].id)),
                            .figures = {{"value", apartMm}, {"limit", kLeastBetweenLevelsMm}}});
    }
}

void checkRoom(const std::vector<LevelRow>& rows, int panels, std::vector<Problem>& problems) {
    for (const LevelRow& row : rows) {
        const double perPanelMm = row.halfWidthMm() / panels;
        if (perPanelMm >= tolerance::kNarrowestPanelMm) continue;
        problems.push_back({.code = ProblemCode::panelTooNarrow,
                            .subject = std::string(keyOf(row.id)),
                            .panel = "1",
                            .figures = {{"value", perPanelMm},
                                        {"limit", tolerance::kNarrowestPanelMm},
                                        {"height", row.heightMm}}});
    }
}

}  // namespace

double easeMm(const Style& style, LevelId level) {
    const auto found = style.easeMm.find(level);
    return found == style.easeMm.end() ? 0 : found->second;
}

double lacingGapMm(const Style& style, LevelId level) {
    const auto found = style.lacingGapAtMm.find(level);
    return found == style.lacingGapAtMm.end() ? style.lacingGapMm : found->second;
}

Outcome<std::vector<LevelRow>> levelTable(const Body& body, const Style& style) {
    std::vector<LevelRow> rows;
    std::vector<Problem> problems;
    for (const LevelSource& source : kSources) {
        if (isMeasured(body, source)) {
            rows.push_back(rowOf(body, style, source));
        } else if (source.isNeeded) {
            addMissing(body, source, problems);
        }
    }
    const bool hasBelowWaist =
        std::ranges::any_of(rows, [](const LevelRow& row) { return row.heightMm < 0; });
    if (!hasBelowWaist) addMissing(body, kSources.front(), problems);
    if (!problems.empty()) return Outcome<std::vector<LevelRow>>::failed(std::move(problems));
    const std::size_t count = rows.size();
    if (rows.back().id == LevelId::aboveBust &&
        rows[count - 1].heightMm - rows[count - 2].heightMm < kLeastAboveBustMm)
        rows.pop_back();
    checkOrder(rows, problems);
    checkRoom(rows, style.panelsPerHalf, problems);
    if (!problems.empty()) return Outcome<std::vector<LevelRow>>::failed(std::move(problems));
    return rows;
}

}  // namespace coutil
