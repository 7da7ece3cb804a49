#include <array>

#include "app/command_line/command.h"
#include "app/command_line/folio_text.h"
#include "app/command_line/messages.h"
#include "app/command_line/shared_options.h"
#include "core/store/folio_file.h"
#include "core/store/report_formats.h"

namespace coutil {
namespace {

constexpr std::array kOptions{kJsonOption, kOutOption, kHelpOption};

ExitCode run(const Call& call) {
    const Outcome<Folio> folio = readFolio(call.operands.front());
    if (!folio) return failedBy(folio.problems);
    return giveResult(call.has("--json") ? writeFolioInfoJson(*folio) : folioText(*folio),
                      call.value("-o").value_or(""));
}

}  // namespace

Command infoCommand() {
    return {
        {"info", "F.coutil", kOptions, {}, {}},
        QT_TRANSLATE_NOOP("CommandLine", "prints client, measurement sets, garments and timeline"),
        &run};
}

}  // namespace coutil
