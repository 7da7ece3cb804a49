#include "ui/comparing/compared_svg.h"

#include "core/revision/ink_line.h"
#include "core/store/comparison_formats.h"

namespace coutil {

namespace {

constexpr char kGraphite[] = "#4C4D52";
constexpr double kLineMm = 0.5;  // what dashes are counted in: the width of a sewing line

ComparedLine lineOf(const ComparedState& state, const QString& label) {
    ComparedLine line{.colour = kGraphite, .dashesMm = {}, .label = label.toStdString()};
    if (state.revision == 0) {
        if (state.isDotted) line.dashesMm = {kLineMm, 3 * kLineMm};
        return line;
    }
    const InkLine ink = inkLineOf(state.revision);
    line.colour = ink.onPaper;
    for (const double pens : ink.dashPens) line.dashesMm.push_back(pens * kLineMm);
    return line;
}

}  // namespace

std::string comparedSvg(const ComparedStates& states) {
    return writeComparisonSvg(states.a.pattern, states.b.pattern, states.comparison,
                              lineOf(states.a, lineNameA(states)),
                              lineOf(states.b, lineNameB(states)), states.garment.toStdString());
}

}  // namespace coutil
