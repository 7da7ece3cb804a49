#include <algorithm>
#include <array>
#include <utility>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/pencil_work.h"
#include "app/command_line/shared_options.h"
#include "core/alterations/apply_alterations.h"
#include "core/store/text_formats.h"
#include "core/store/whole_file.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    OptionSpec{"--marks", "K.json", false,
               QT_TRANSLATE_NOOP("CommandLine", "the marks of the fitting")},
    kGarmentOption, kPencilOption, kDateOption, kHelpOption};
constexpr std::array<std::string_view, 1> kRequired{"--marks"};

Fitting fittingOf(PencilWork& work, const MarksText& marks, const ChosenRevision& tried) {
    return {.id = work.ids.next("fitting"),
            .heldOn = marks.date.empty() ? work.date : marks.date,
            .how = marks.how,
            .readBy = marks.by,
            .revision = tried.revision,
            .pencil = tried.pencil,
            .note = marks.note,
            .marks = marks.marks};
}

void addFitting(Garment& garment, Fitting fitting) {
    const auto after =
        std::ranges::upper_bound(garment.fittings, fitting.heldOn, {}, &Fitting::heldOn);
    garment.fittings.insert(after, std::move(fitting));
}

// The marks are read on what was tried, which may be another state than the pencil is in by now.
std::vector<Problem> takeMarks(PencilWork& work, const MarksText& marks, const std::string& tried,
                               const Call& call) {
    const Outcome<ChosenRevision> chosen = chosenRevision(work.garment(), tried, call);
    if (!chosen) return chosen.problems;
    const GarmentOutcome outcome = outcomeOf(work.folio, work.garment(), *chosen);
    if (!outcome.pattern) return outcome.problems;
    FromMarks made = alterationsFrom(marks.marks, *outcome.pattern, {},
                                     [&] { return work.ids.next("alteration"); });
    if (!made.problems.empty()) return made.problems;
    Pencil& pencil = work.changed();
    for (Alteration& alteration : made.alterations)
        pencil.alterations.push_back(std::move(alteration));
    addFitting(work.garment(), fittingOf(work, marks, *chosen));
    return {};
}

ExitCode run(const Call& call) {
    const std::string file = *call.value("--marks");
    const Outcome<std::string> text = readWholeFile(file);
    if (!text) return failedBy(text.problems);
    const auto sound = readMarksJson(*text);
    if (!sound) return failedBy(sound.problems, LengthUnit::millimetre, file);
    const std::string tried = sound->revision ? std::to_string(*sound->revision) : "latest";
    Outcome<PencilWork> work = beginPencilWork(call, *text, tried);
    if (!work) return failedBy(work.problems);
    // Read again: now with the ids that belong to this folio.
    const auto marks = readMarksJson(*text, [&] { return work->ids.next("mark"); });
    const std::vector<Problem> before = problemsNow(*work);
    std::vector<Problem> problems = takeMarks(*work, *marks, tried, call);
    if (problems.empty()) problems = writePencilWork(*work, call, before);
    return problems.empty() ? ExitCode::done : failedBy(problems, work->folio.unit);
}

}  // namespace

Command fitCommand() {
    return {{"fit", "F.coutil", kOptions, kRequired, {}},
            QT_TRANSLATE_NOOP("CommandLine",
                              "records a fitting and draws what its marks ask for in pencil"),
            &run};
}

}  // namespace coutil
