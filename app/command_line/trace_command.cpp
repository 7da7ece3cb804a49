#include <array>
#include <optional>

#include "app/command_line/command.h"
#include "app/command_line/cutter_options.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/store/interchange.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    kGarmentOption,
    kRevisionOption,
    kPencilOption,
    kJsonOption,
    kSvgOption,
    kDxfOption,
    OptionSpec{
        "--cutter", "", false,
        QT_TRANSLATE_NOOP("CommandLine", "cutting lines only, in order, for a laser or a cutter")},
    kKerfOption,
    kMirroredOption,
    kOutOption,
    kDateOption,
    kNoNameOption,
    kHelpOption};
constexpr std::array<std::string_view, 3> kFormats{"--json", "--svg", "--dxf"};

std::string drawn(const OpenedGarment& opened, const Call& call) {
    const std::vector<Tracing>& tracings = *opened.outcome.tracings;
    const TracingTitle title = titleFor(opened, call);
    if (call.has("--svg")) return writeTracingsSvg(tracings, title);
    if (call.has("--dxf")) return writeTracingsDxf(tracings, title);
    return writeTracingsJson(tracings, title, opened.outcome.problems, [&](const Problem& problem) {
        return sentenceLine(problem, opened.folio.unit);
    });
}

ExitCode cut(const OpenedGarment& opened, const Call& call) {
    const Outcome<CutterChoices> choices = readCutterChoices(call);
    if (!choices) return failedBy(choices.problems, LengthUnit::millimetre);
    const std::vector<Tracing>& tracings = *opened.outcome.tracings;
    const auto text = call.has("--svg") ? writeCutterSvg(tracings, titleFor(opened, call), *choices)
                                        : writeCutterDxf(tracings, *choices);
    if (!text) return failedBy(text.problems, opened.folio.unit);
    sayProblems(text.problems, opened.folio.unit);
    return giveResult(*text, call.value("-o").value_or(""));
}

// Options of the cutter want it, and it draws no JSON.
std::optional<Problem> unfit(const Call& call) {
    Problem problem;
    if (call.has("--cutter")) {
        if (!call.has("--json")) return std::nullopt;
        problem.code = ProblemCode::optionsExclude;
        problem.subject = "--cutter";
        problem.detail = "--json";
        return problem;
    }
    for (const char* option : {"--kerf", "--mirrored-too"}) {
        if (!call.has(option)) continue;
        problem.code = ProblemCode::callIncomplete;
        problem.subject = std::string("trace ") + option;
        problem.detail = "--cutter";
        return problem;
    }
    return std::nullopt;
}

ExitCode run(const Call& call) {
    if (const auto problem = unfit(call)) return failedBy({*problem});
    const Outcome<OpenedGarment> opened = openGarment(call);
    if (!opened) return failedBy(opened.problems);
    if (!opened->outcome.tracings) return failedBy(opened.problems, opened->folio.unit);
    sayProblems(opened.problems, opened->folio.unit);
    if (call.has("--cutter")) return cut(*opened, call);
    return giveResult(drawn(*opened, call), call.value("-o").value_or(""));
}

}  // namespace

Command traceCommand() {
    return {{"trace", "F.coutil", kOptions, {}, kFormats},
            QT_TRANSLATE_NOOP("CommandLine",
                              "prints the tracings: panels with allowances and marks, to cut"),
            &run};
}

}  // namespace coutil
