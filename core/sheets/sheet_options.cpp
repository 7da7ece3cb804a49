#include <algorithm>

#include "core/sheets/sheet_plan.h"

namespace coutil {
namespace {

double mm(long long um) { return static_cast<double>(um) / 1000; }

Problem outOfRange(const char* option, double value, double lowest, double highest,
                   FigureUnit unit) {
    Problem problem;
    problem.code = ProblemCode::sheetOptionOutOfRange;
    problem.subject = option;
    problem.figures = {
        {"value", value, unit}, {"lowest", lowest, unit}, {"highest", highest, unit}};
    return problem;
}

// The first page needs this much inside the margins for the square, its two bars and the map.
constexpr long long kLeastFrameUm = 120'000;
constexpr long long kLeastLongFrameUm = 178'000;
constexpr long long kWidestMarginUm = 50'000;
constexpr long long kWidestOverlapUm = 40'000;
constexpr double kLeastScale = 0.97;
constexpr double kMostScale = 1.03;

void checkScale(const char* option, double scale, std::vector<Problem>& problems) {
    // Written so that a figure that is not a number is refused too.
    if (scale >= kLeastScale && scale <= kMostScale) return;
    problems.push_back(outOfRange(option, scale, kLeastScale, kMostScale, FigureUnit::count));
}

}  // namespace

std::vector<Problem> checkSheetOptions(const SheetOptions& options) {
    std::vector<Problem> problems;
    const auto millimetre = FigureUnit::millimetre;
    if (options.marginUm < 0 || options.marginUm > kWidestMarginUm) {
        problems.push_back(
            outOfRange("margin", mm(options.marginUm), 0, mm(kWidestMarginUm), millimetre));
        return problems;
    }
    const long long leastSide = std::min(options.paper.widthUm, options.paper.heightUm);
    const long long longSide = std::max(options.paper.widthUm, options.paper.heightUm);
    const long long frame = leastSide - 2 * options.marginUm;
    const long long longFrame = longSide - 2 * options.marginUm;
    if (frame < kLeastFrameUm || longFrame < kLeastLongFrameUm) {
        const bool isNarrow = frame < kLeastFrameUm;
        Problem problem;
        problem.code = ProblemCode::paperTooSmall;
        problem.subject = "paper";
        problem.detail = options.paper.name;
        problem.figures = {{"value", mm(std::max(isNarrow ? frame : longFrame, 0LL))},
                           {"limit", mm(isNarrow ? kLeastFrameUm : kLeastLongFrameUm)}};
        problems.push_back(problem);
        return problems;
    }
    if (longSide > kLongestPageUm) {
        problems.push_back(outOfRange("paper", mm(longSide),
                                      mm(kLeastFrameUm + 2 * options.marginUm), mm(kLongestPageUm),
                                      millimetre));
    }
    const long long most = std::min(kWidestOverlapUm, frame / 3);
    if (options.overlapUm < 0 || options.overlapUm > most) {
        problems.push_back(outOfRange("overlap", mm(options.overlapUm), 0, mm(most), millimetre));
    }
    checkScale("scale-x", options.scaleX, problems);
    checkScale("scale-y", options.scaleY, problems);
    return problems;
}

}  // namespace coutil
