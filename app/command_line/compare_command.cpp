#include <array>
#include <utility>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/revision/ink_line.h"
#include "core/store/comparison_formats.h"
#include "core/store/folio_file.h"
#include "ui/words/revision_words.h"

namespace coutil {
namespace {

constexpr std::array kOptions{kGarmentOption, kPencilOption, kJsonOption,
                              kSvgOption,     kOutOption,    kHelpOption};
constexpr std::array<std::string_view, 2> kFormats{"--json", "--svg"};

constexpr char kGraphite[] = "#4C4D52";
constexpr double kLineMm = 0.5;  // what dashes are counted in: the width of a sewing line

// One of the two that are compared.
struct ComparedState {
    ChosenRevision chosen;
    Pattern pattern;
    RevisionHead head;
};

Outcome<ComparedState> comparedState(const Folio& folio, const Garment& garment,
                                     const std::string& id, const Call& call) {
    const Outcome<ChosenRevision> chosen = chosenRevision(garment, id, call);
    if (!chosen) return Outcome<ComparedState>::failed(chosen.problems);
    GarmentOutcome outcome = outcomeOf(folio, garment, *chosen);
    if (!outcome.pattern) return Outcome<ComparedState>::failed(std::move(outcome.problems));
    return ComparedState{*chosen, *std::move(outcome.pattern), headOf(folio, garment, *chosen)};
}

ComparedLine lineOf(const Folio& folio, const Garment& garment, const ChosenRevision& chosen) {
    ComparedLine line;
    const Revision* revision = findRevision(folio, chosen.revision);
    if (revision == nullptr) {
        line.colour = kGraphite;
        line.label = pencilName(*findPencil(garment, chosen.pencil)).toStdString();
        return line;
    }
    const InkLine ink = inkLineOf(revision->number());
    line.colour = ink.onPaper;
    for (const double pens : ink.dashPens) line.dashesMm.push_back(pens * kLineMm);
    line.label = revisionName(*revision).toStdString();
    return line;
}

std::string drawn(const Folio& folio, const Garment& garment, const ComparedState& a,
                  const ComparedState& b, const Call& call) {
    ComparisonReport report{.a = a.head, .b = b.head};
    report.alterations = alterationsBetween(folio, {a.chosen.revision, a.chosen.pencil},
                                            {b.chosen.revision, b.chosen.pencil});
    const auto how =
        report.alterations.isSameBlock ? Registration::ownFrame : Registration::automatic;
    report.comparison = comparePatterns(a.pattern, b.pattern, how);
    if (call.has("--svg")) {
        return writeComparisonSvg(a.pattern, b.pattern, report.comparison,
                                  lineOf(folio, garment, a.chosen),
                                  lineOf(folio, garment, b.chosen), garment.name);
    }
    report.chart = girthChart(a.pattern, b.pattern);
    return writeComparisonJson(report);
}

ExitCode run(const Call& call) {
    const Outcome<Folio> folio = readFolio(call.operands[0]);
    if (!folio) return failedBy(folio.problems);
    const Outcome<std::size_t> index = chosenGarment(*folio, call);
    if (!index) return failedBy(index.problems);
    const Garment& garment = folio->garments[*index];
    const auto a = comparedState(*folio, garment, call.operands[1], call);
    if (!a) return failedBy(a.problems, folio->unit);
    const auto b = comparedState(*folio, garment, call.operands[2], call);
    if (!b) return failedBy(b.problems, folio->unit);
    return giveResult(drawn(*folio, garment, *a, *b, call), call.value("-o").value_or(""));
}

}  // namespace

Command compareCommand() {
    return {{"compare", "F.coutil A B", kOptions, {}, kFormats},
            QT_TRANSLATE_NOOP("CommandLine", "tells what is different between two revisions"),
            &run};
}

}  // namespace coutil
