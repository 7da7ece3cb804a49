#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofMeasurements(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::measurementMissing:
            return tr(
                "{subject} is missing[ (or {detail} in its place)]; measure it and type it "
                "in, nothing can be drafted without it.");
        case ProblemCode::measurementImpossible:
            return tr(
                "{subject} cannot be {value}: bodies lie between {lowest} and {highest}; "
                "check the figure and its unit.");
        case ProblemCode::measurementImprobable:
            if (hasFigure(problem, "expected")) {
                return tr(
                    "{subject} of {value} is unusual:[ going by {detail},] {expected} give or "
                    "take {spread} is expected; measure again, or keep it if it is right.");
            }
            return tr(
                "{subject} of {value} is rare: it usually lies between {lowest} and "
                "{highest}; measure again, or keep it if it is right.");
        case ProblemCode::measurementsContradict:
            if (hasFigure(problem, "lowest")) {
                return tr(
                    "{subject} ({value}) does not agree with {detail} ({other}): it should "
                    "be more than {lowest}; measure both again.");
            }
            return tr(
                "{subject} ({value}) does not agree with {detail} ({other}): it should be "
                "less than {highest}; measure both again.");
        case ProblemCode::measurementUnknown:
            return tr("{path}: there is no measurement of this name[; did you mean “{text}”?]");
        default:
            return {};
    }
}

}  // namespace coutil
