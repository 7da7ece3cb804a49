#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "core/pattern/every_check.h"

namespace coutil {
namespace {

// From here on a reduction wants a word of caution (common practice, no source).
constexpr double kCautionPercent = 10;

}  // namespace

std::vector<Problem> checkGirths(const Pattern& pattern) {
    std::vector<Problem> problems;
    for (const Level& level : pattern.levels) {
        if (!level.patternMm || !level.targetMm) continue;
        const double differenceMm = *level.patternMm - *level.targetMm;
        if (std::abs(differenceMm) <= tolerance::kGirthToldMm) continue;
        Problem problem{.code = ProblemCode::girthOffTarget,
                        .severity = Severity::note,
                        .subject = level.name,
                        .figures = {{"value", *level.patternMm},
                                    {"target", *level.targetMm},
                                    {"difference", differenceMm}}};
        if (level.bodyMm) problem.figures.push_back({"body", *level.bodyMm});
        problems.push_back(std::move(problem));
    }
    return problems;
}

std::vector<Problem> checkReduction(const Pattern& pattern) {
    const auto waist = std::ranges::find(pattern.levels, "waist", &Level::name);
    if (waist == pattern.levels.end() || !waist->bodyMm || !waist->patternMm) return {};
    const double reductionMm = *waist->bodyMm - *waist->patternMm;
    const double mostMm = *waist->bodyMm * kCautionPercent / 100;
    if (reductionMm <= mostMm + tolerance::kGirthMm) return {};
    return {{.code = ProblemCode::reductionLarge,
             .severity = Severity::warning,
             .subject = waist->name,
             .figures = {{"value", reductionMm},
                         {"percent", reductionMm / *waist->bodyMm * 100, FigureUnit::percent},
                         {"limit", kCautionPercent, FigureUnit::percent}}}};
}

}  // namespace coutil
