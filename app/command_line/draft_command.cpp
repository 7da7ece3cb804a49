#include <QDate>
#include <array>
#include <cerrno>
#include <filesystem>
#include <system_error>

#include "app/command_line/command.h"
#include "app/command_line/draft_input.h"
#include "app/command_line/drafted_folio.h"
#include "app/command_line/messages.h"
#include "app/command_line/opened_garment.h"
#include "app/command_line/shared_options.h"
#include "core/revision/draft_garment.h"
#include "core/store/folio_file.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    OptionSpec{"--measurements", "M.json", false,
               QT_TRANSLATE_NOOP("CommandLine", "the readings of one day")},
    OptionSpec{"--style", "S.json", false,
               QT_TRANSLATE_NOOP("CommandLine", "the decisions for the garment")},
    OptionSpec{"--set", "NAME=VALUE", true,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "put one measurement or style entry (ease.waist=-40) over the "
                                 "files; may be repeated")},
    OptionSpec{"--block", "corset", false, QT_TRANSLATE_NOOP("CommandLine", "the kind of block")},
    OptionSpec{"--garment", "NAME", false,
               QT_TRANSLATE_NOOP("CommandLine", "what the garment is called (Corset)")},
    OptionSpec{"--client", "LABEL", false,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "what a new folio calls the client (the name of the file)")},
    OptionSpec{
        "-o", "F.coutil", false,
        QT_TRANSLATE_NOOP("CommandLine", "the folio: a new one, or one that gets another garment")},
    kDateOption,
    kHelpOption};
constexpr std::array<std::string_view, 2> kRequired{"--measurements", "-o"};

std::optional<Problem> checkBlock(const Call& call) {
    const std::string block = call.value("--block").value_or("corset");
    if (block == "corset") return std::nullopt;
    Problem problem;
    problem.code = ProblemCode::optionBadValue;
    problem.subject = "--block";
    problem.detail = block;
    return problem;
}

NewGarment newGarmentFor(const Call& call) {
    NewGarment garment;
    garment.name = call.value("--garment").value_or("");
    garment.client =
        call.value("--client").value_or(std::filesystem::path(*call.value("-o")).stem().string());
    garment.isRepeatable = call.has("--date");
    garment.date =
        call.value("--date").value_or(QDate::currentDate().toString(Qt::ISODate).toStdString());
    return garment;
}

// The folio that stands at the place already, or an empty one.
Outcome<Folio> folioAt(const std::filesystem::path& file) {
    std::error_code unknown;
    const std::filesystem::file_status there = std::filesystem::status(file, unknown);
    const bool isFolder = std::filesystem::is_directory(there);
    if (isFolder || std::filesystem::is_other(there)) {
        Problem problem;
        problem.code = ProblemCode::fileUnwritable;
        problem.subject = file.string();
        if (isFolder) problem.detail = std::generic_category().message(EISDIR);
        return problem;
    }
    const bool isFree = there.type() == std::filesystem::file_type::not_found;
    return isFree ? Outcome<Folio>(Folio{}) : readFolio(file);
}

// The name of a client is given once, with the folio.
std::optional<Problem> checkClient(const Call& call, const Folio& old) {
    if (!call.has("--client") || old.id.empty()) return std::nullopt;
    Problem problem;
    problem.code = ProblemCode::optionBadValue;
    problem.subject = "--client";
    problem.detail = *call.value("--client");
    problem.figures = {{"garments", static_cast<double>(old.garments.size()), FigureUnit::count}};
    return problem;
}

ExitCode put(const Call& call, const DraftInput& input) {
    const std::filesystem::path file = *call.value("-o");
    const Outcome<Folio> old = folioAt(file);
    if (!old) return failedBy(old.problems);
    if (const auto problem = checkClient(call, *old)) return failedBy({*problem});
    const Outcome<Folio> folio = withGarment(*old, input, newGarmentFor(call));
    if (!folio) return failedBy(folio.problems);
    if (const auto problem = writeFolio(*folio, file)) return failedBy({*problem});
    return ExitCode::done;
}

ExitCode refusedBy(const std::vector<InputFault>& faults, LengthUnit unit) {
    std::vector<Problem> all;
    for (const InputFault& fault : faults) {
        sayProblems(fault.problems, unit, fault.where);
        all.insert(all.end(), fault.problems.begin(), fault.problems.end());
    }
    return exitCodeFor(all);
}

// Every problem in the unit that its figure was written in: a style's entries are millimetres.
void sayInUnitOfInput(const std::vector<Problem>& problems, LengthUnit ofMeasurements) {
    for (const Problem& problem : problems) {
        const bool isOfStyle = problem.code == ProblemCode::styleValueOutOfRange;
        sayProblems({problem}, isOfStyle ? LengthUnit::millimetre : ofMeasurements);
    }
}

ExitCode run(const Call& call) {
    for (const auto& problem : {checkBlock(call), checkDate(call)})
        if (problem) return failedBy({*problem});
    const ReadInput read = readDraftInput(call);
    if (!read.faults.empty()) return refusedBy(read.faults, read.input.set.unit);
    const GarmentOutcome outcome = draftGarment(read.input.set, read.input.style);
    sayInUnitOfInput(outcome.problems, read.input.set.unit);
    if (!outcome.tracings) return exitCodeFor(outcome.problems);
    return put(call, read.input);
}

}  // namespace

Command draftCommand() {
    return {{"draft", "", kOptions, kRequired, {}},
            QT_TRANSLATE_NOOP("CommandLine", "drafts a block from measurements into a folio"),
            &run};
}

}  // namespace coutil
