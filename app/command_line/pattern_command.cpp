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
    const Pattern& pattern = *opened.outcome.pattern;
    if (call.has("--svg")) return writePatternSvg(pattern, titleFor(opened, call));
    if (call.has("--dxf")) return writePatternDxf(pattern, titleFor(opened, call));
    return writePatternJson(
        pattern, opened.head, opened.outcome.problems,
        [&](const Problem& problem) { return sentenceLine(problem, opened.folio.unit); });
}

ExitCode run(const Call& call) {
    const Outcome<OpenedGarment> opened = openGarment(call);
    if (!opened) return failedBy(opened.problems);
    sayProblems(opened.problems, opened->folio.unit);
    return giveResult(drawn(*opened, call), call.value("-o").value_or(""));
}

}  // namespace

Command patternCommand() {
    return {{"pattern", "F.coutil", kOptions, {}, kFormats},
            QT_TRANSLATE_NOOP("CommandLine", "prints the master: all panels of one revision"),
            &run};
}

}  // namespace coutil
