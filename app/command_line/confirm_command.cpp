#include <QDate>
#include <QStringList>
#include <array>
#include <utility>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/revision/confirm.h"
#include "core/store/folio_file.h"
#include "core/store/text_formats.h"
#include "ui/words/changes_told.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    OptionSpec{"--note", "TEXT", false,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "what the revision is about (what was altered, in words)")},
    OptionSpec{"--by", "WHO", false, QT_TRANSLATE_NOOP("CommandLine", "who confirms")},
    OptionSpec{"--accept-errors", "REASON", false,
               QT_TRANSLATE_NOOP("CommandLine", "confirm although errors stand, and why")},
    kGarmentOption,
    kPencilOption,
    kDateOption,
    kHelpOption};

// The pencil asked for: --pencil, else the newest.
Outcome<ChosenRevision> chosenPencil(const Garment& garment, const Call& call) {
    if (garment.pencils.empty()) {
        Problem problem;
        problem.code = ProblemCode::pencilMissing;
        problem.subject = garment.name;
        return problem;
    }
    return chosenRevision(garment, "pencil", call);
}

Confirmation confirmationOf(const Call& call, const Folio& folio, const Pencil& pencil) {
    const std::string today = QDate::currentDate().toString(Qt::ISODate).toStdString();
    return {.on = call.value("--date").value_or(today),
            .by = call.value("--by").value_or(""),
            .note = call.value("--note").value_or(
                changesOf(folio, pencil, folio.unit).join(QStringLiteral("; ")).toStdString()),
            .reason = call.value("--accept-errors").value_or("")};
}

Outcome<Folio> confirmedFolio(const Folio& folio, std::size_t index, const std::string& id,
                              const Call& call) {
    const Garment& garment = folio.garments[index];
    const GarmentOutcome outcome = outcomeOf(folio, garment, {{}, id});
    return pencilConfirmed(folio, index, id, {outcome.pattern, outcome.problems},
                           confirmationOf(call, folio, *findPencil(garment, id)), writeRecipeJson);
}

ExitCode run(const Call& call) {
    if (const auto problem = checkDate(call)) return failedBy({*problem});
    const Outcome<Folio> folio = readFolio(call.operands.front());
    if (!folio) return failedBy(folio.problems);
    const Outcome<std::size_t> index = chosenGarment(*folio, call);
    if (!index) return failedBy(index.problems);
    const auto chosen = chosenPencil(folio->garments[*index], call);
    if (!chosen) return failedBy(chosen.problems);
    const Outcome<Folio> after = confirmedFolio(*folio, *index, chosen->pencil, call);
    if (!after) return failedBy(after.problems, folio->unit);
    if (const auto problem = writeFolio(*after, call.operands.front())) return failedBy({*problem});
    const int number = after->garments[*index].revisions.back()->number();
    return giveResult(std::to_string(number) + "\n", {});
}

}  // namespace

Command confirmCommand() {
    return {{"confirm", "F.coutil", kOptions, {}, {}},
            QT_TRANSLATE_NOOP("CommandLine",
                              "goes over the pencil in ink; prints the new revision's number"),
            &run};
}

}  // namespace coutil
