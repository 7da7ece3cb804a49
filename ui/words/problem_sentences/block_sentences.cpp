#include <algorithm>

#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

namespace {

// "between 100 % and 100 %" is said more simply.
bool leavesOneValue(const Problem& problem) {
    const auto lowest = std::ranges::find(problem.figures, "lowest", &Figure::name);
    const auto highest = std::ranges::find(problem.figures, "highest", &Figure::name);
    return lowest != problem.figures.end() && highest != problem.figures.end() &&
           lowest->value == highest->value;
}

}  // namespace

QString ProblemSentence::ofBlock(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::styleValueOutOfRange:
            if (leavesOneValue(problem)) {
                return tr("{subject} is {value}, but must be {lowest}; change it in the style.");
            }
            return tr(
                "{subject}[ is {value}][, but must lie between {lowest} and {highest}]; change it "
                "in the style.");
        case ProblemCode::styleUnknownKey:
            return tr(
                "{subject}: “{text}” cannot be used here; name seams and edges as this block has "
                "them, and every level of your own once.");
        case ProblemCode::panelTooNarrow:
            return tr(
                "[Panel {panel} ]is too narrow at {subject}[: {value} where {limit} is the "
                "least]; use fewer panels, less reduction, or a smaller lacing gap.");
        case ProblemCode::levelOrderWrong:
            return tr(
                "The levels {subject} and {detail} lie too close together or in the wrong "
                "order[ ({value} apart, at least {limit} needed)]; measure their heights "
                "again.");
        case ProblemCode::edgeHeightImpossible:
            return tr(
                "{subject}[ at {detail}] cannot end {value} from the waist[: between "
                "{lowest} and {highest} is possible]; change this height in the style.");
        case ProblemCode::reductionLarge:
            return tr(
                "The waist is reduced by {value}[ ({percent})], for practised wearers only[ "
                "above {limit}]: reduce less, or lace with care and stop at pain, numbness "
                "or short breath.");
        case ProblemCode::girthTargetMissed:
            return tr(
                "The girth at {subject}[ is {value:fine} on the panels, not {target:fine} as the "
                "girth table says]; draft the garment again.");
        case ProblemCode::seamLengthsDiffer:
            return tr(
                "Seam {subject}: the two edges differ in length[ by {difference:fine}][ "
                "({value:fine} and {other:fine})]; correct one of them so that they can be sewn "
                "together.");
        case ProblemCode::lineBrokenAcrossSeam:
            return tr(
                "[The {detail} ]is not one smooth line across seam {subject}[ but bends by "
                "{value}]; smooth it there.");
        default:
            return {};
    }
}

}  // namespace coutil
