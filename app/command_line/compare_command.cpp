#include <QDate>
#include <array>
#include <utility>

#include "app/command_line/command.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/store/comparison_formats.h"
#include "core/store/folio_file.h"
#include "ui/comparing/compared_svg.h"
#include "ui/printing/compare_pdf.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    kGarmentOption,
    kPencilOption,
    kJsonOption,
    kSvgOption,
    OptionSpec{"--pdf", "", false,
               QT_TRANSLATE_NOOP("CommandLine", "as pages to print: drawing, girths, figures")},
    kOutOption,
    kDateOption,
    kNoNameOption,
    kHelpOption};
constexpr std::array<std::string_view, 3> kFormats{"--json", "--svg", "--pdf"};

// One of the two that a call names.
struct NamedState {
    ChosenRevision chosen;
    Pattern pattern;
    RevisionHead head;
};

Outcome<NamedState> namedState(const Folio& folio, const Garment& garment, const std::string& id,
                               const Call& call) {
    const Outcome<ChosenRevision> chosen = chosenRevision(garment, id, call);
    if (!chosen) return Outcome<NamedState>::failed(chosen.problems);
    GarmentOutcome outcome = outcomeOf(folio, garment, *chosen);
    if (!outcome.pattern) return Outcome<NamedState>::failed(std::move(outcome.problems));
    return NamedState{*chosen, *std::move(outcome.pattern), headOf(folio, garment, *chosen)};
}

StateRef refOf(const NamedState& state) { return {state.chosen.revision, state.chosen.pencil}; }

std::string reported(const Folio& folio, const NamedState& a, const NamedState& b) {
    ComparisonReport report{.a = a.head, .b = b.head};
    report.alterations = alterationsBetween(folio, refOf(a), refOf(b));
    const auto how =
        report.alterations.isSameBlock ? Registration::ownFrame : Registration::automatic;
    report.comparison = comparePatterns(a.pattern, b.pattern, how);
    report.chart = girthChart(a.pattern, b.pattern);
    return writeComparisonJson(report);
}

ExitCode writePdf(const Folio& folio, const ComparedStates& states, const Call& call) {
    const QDate day =
        call.has("--date")
            ? QDate::fromString(QString::fromStdString(*call.value("--date")), Qt::ISODate)
            : QDate::currentDate();
    ComparePaper paper = comparePaper(folio, states, day);
    paper.hasClient = !call.has("--no-name");
    const Outcome<PdfEnd> written =
        writeComparePdf(states, paper, day, QString::fromStdString(*call.value("-o")));
    return written ? ExitCode::done : failedBy(written.problems, folio.unit);
}

// Pages go to a file: half a PDF on a terminal helps nobody.
std::optional<Problem> checkCall(const Call& call) {
    if (auto problem = checkDate(call)) return problem;
    const std::string out = call.value("-o").value_or("");
    if (!call.has("--pdf") || (!out.empty() && out != "-")) return std::nullopt;
    Problem problem;
    problem.code = ProblemCode::callIncomplete;
    problem.subject = "compare --pdf";
    problem.detail = "-o OUT.pdf";
    return problem;
}

ExitCode run(const Call& call) {
    if (const auto problem = checkCall(call)) return failedBy({*problem});
    const Outcome<Folio> folio = readFolio(call.operands[0]);
    if (!folio) return failedBy(folio.problems);
    const Outcome<std::size_t> index = chosenGarment(*folio, call);
    if (!index) return failedBy(index.problems);
    const Garment& garment = folio->garments[*index];
    const auto a = namedState(*folio, garment, call.operands[1], call);
    if (!a) return failedBy(a.problems, folio->unit);
    const auto b = namedState(*folio, garment, call.operands[2], call);
    if (!b) return failedBy(b.problems, folio->unit);
    const std::string out = call.value("-o").value_or("");
    if (call.has("--json")) return giveResult(reported(*folio, *a, *b), out);
    const auto states = comparedStates(*folio, refOf(*a), refOf(*b));  // both were drafted above
    return call.has("--pdf") ? writePdf(*folio, *states, call)
                             : giveResult(comparedSvg(*states), out);
}

}  // namespace

Command compareCommand() {
    return {{"compare", "F.coutil A B", kOptions, {}, kFormats},
            QT_TRANSLATE_NOOP("CommandLine", "tells what is different between two revisions"),
            &run,
            true};
}

}  // namespace coutil
