#include <array>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/store/interchange.h"

namespace coutil {
namespace {

constexpr std::array kOptions{kGarmentOption, kRevisionOption, kPencilOption, kJsonOption,
                              kSvgOption,     kDxfOption,      kOutOption,    kDateOption,
                              kNoNameOption,  kHelpOption};
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

ExitCode run(const Call& call) {
    const Outcome<OpenedGarment> opened = openGarment(call);
    if (!opened) return failedBy(opened.problems);
    if (!opened->outcome.tracings) return failedBy(opened.problems, opened->folio.unit);
    sayProblems(opened.problems, opened->folio.unit);
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
