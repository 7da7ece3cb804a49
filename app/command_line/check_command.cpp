#include <algorithm>
#include <array>

#include "app/command_line/check_text.h"
#include "app/command_line/command.h"
#include "app/command_line/drawing_back.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/revision/drift.h"
#include "core/revision/set_aside.h"
#include "core/store/folio_file.h"
#include "core/store/report_formats.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    kGarmentOption,
    kRevisionOption,
    kPencilOption,
    OptionSpec{
        "--drawing", "X.svg", false,
        QT_TRANSLATE_NOOP("CommandLine", "compare an SVG that came back from another program")},
    kKerfOption,
    kJsonOption,
    kOutOption,
    kHelpOption};

// What drafting says, and every promise of the pattern looked at again from its outlines alone.
GarmentCheck checked(const Folio& folio, const Garment& garment, const ChosenRevision& chosen) {
    GarmentOutcome outcome = outcomeOf(folio, garment, chosen);
    GarmentCheck check;
    check.garment = garment.name;
    check.revision = headOf(folio, garment, chosen).id;
    check.problems = std::move(outcome.problems);
    if (!outcome.pattern) return check;
    for (Problem& again : checkPattern(*outcome.pattern)) {
        if (std::ranges::find(check.problems, again) == check.problems.end())
            check.problems.push_back(std::move(again));
    }
    check.estimates = outcome.pattern->estimates;
    if (const Pencil* pencil = findPencil(garment, chosen.pencil)) {
        PartedProblems parted = partedBy(pencil->setAside, std::move(check.problems));
        check.problems = std::move(parted.standing);
    }
    return check;
}

// What is to be said of the confirmed revisions, whichever state is looked at. That their ink is
// what was confirmed was shown by reading the file.
void addHistory(const Folio& folio, const Garment& garment, GarmentCheck& check) {
    const std::vector<Problem> drift = driftIn(folio, garment);
    check.problems.insert(check.problems.end(), drift.begin(), drift.end());
    for (const Shared<Revision>& revision : garment.revisions) {
        if (const std::string& text = revision->content().errorsAccepted; !text.empty())
            check.acceptedErrors.push_back({revision->number(), text});
    }
}

// Adds what the drawing is like; problems when it cannot be compared.
std::vector<Problem> addDrawing(const Call& call, const Folio& folio, const Garment& garment,
                                const ChosenRevision& chosen, GarmentCheck& check) {
    const GarmentOutcome outcome = outcomeOf(folio, garment, chosen);
    if (!outcome.pattern || !outcome.tracings) return outcome.problems;
    Outcome<DrawingCheck> drawing = checkDrawingBack(call, *outcome.pattern, *outcome.tracings);
    if (!drawing) return std::move(drawing.problems);
    check.drawing = std::move(drawing->panels);
    std::move(drawing->problems.begin(), drawing->problems.end(),
              std::back_inserter(check.problems));
    return {};
}

// A drawing is of one garment.
std::optional<Problem> unfit(const Call& call, const std::vector<std::size_t>& garments) {
    Problem problem;
    problem.code = ProblemCode::callIncomplete;
    problem.subject = "check";
    if (call.has("--kerf") && !call.has("--drawing")) {
        problem.detail = "--drawing";
        return problem;
    }
    if (!call.has("--drawing") || garments.size() == 1) return std::nullopt;
    problem.detail = "--garment";
    return problem;
}

bool isWorthAnExitCode(const GarmentCheck& check) {
    return std::ranges::any_of(check.problems,
                               [](const Problem& p) { return p.severity != Severity::note; });
}

ExitCode run(const Call& call) {
    const Outcome<Folio> folio = readFolio(call.operands.front());
    if (!folio) return failedBy(folio.problems);
    const auto garments = chosenGarments(*folio, call);
    if (!garments) return failedBy(garments.problems);
    if (const auto problem = unfit(call, *garments)) return failedBy({*problem});
    std::vector<GarmentCheck> checks;
    for (const std::size_t index : *garments) {
        const Garment& garment = folio->garments[index];
        const auto chosen =
            chosenRevision(garment, call.value("--revision").value_or("latest"), call);
        if (!chosen) return failedBy(chosen.problems);
        checks.push_back(checked(*folio, garment, *chosen));
        addHistory(*folio, garment, checks.back());
        if (!call.has("--drawing")) continue;
        const auto problems = addDrawing(call, *folio, garment, *chosen, checks.back());
        if (!problems.empty()) return failedBy(problems, folio->unit);
    }
    const auto sentence = [&](const Problem& p) { return sentenceLine(p, folio->unit); };
    const ExitCode given = giveResult(
        call.has("--json") ? writeCheckJson(checks, sentence) : checkText(checks, folio->unit),
        call.value("-o").value_or(""));
    if (given != ExitCode::done) return given;
    return std::ranges::any_of(checks, isWorthAnExitCode) ? ExitCode::problemsFound
                                                          : ExitCode::done;
}

}  // namespace

Command checkCommand() {
    return {{"check", "F.coutil", kOptions, {}, {}},
            QT_TRANSLATE_NOOP("CommandLine",
                              "prints problems of the pattern; looks whether the file is whole"),
            &run};
}

}  // namespace coutil
