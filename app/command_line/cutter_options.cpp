#include "app/command_line/cutter_options.h"

#include "core/units/length.h"

namespace coutil {

Outcome<CutterChoices> readCutterChoices(const Call& call) {
    CutterChoices choices;
    choices.mirroredToo = call.has("--mirrored-too");
    const auto text = call.value("--kerf");
    if (!text) return choices;
    const Outcome<double> mm = readLengthMm(*text, LengthUnit::millimetre);
    if (mm && *mm >= 0 && *mm <= kWidestKerfMm) {
        choices.kerfMm = *mm;
        return choices;
    }
    Problem problem;
    problem.code = ProblemCode::optionBadValue;
    problem.subject = "--kerf";
    problem.detail = *text;
    problem.figures = {{"lowest", 0}, {"highest", kWidestKerfMm}};
    return problem;
}

}  // namespace coutil
