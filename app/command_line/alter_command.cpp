#include <array>
#include <utility>

#include "app/command_line/command.h"
#include "app/command_line/draft_input.h"
#include "app/command_line/drafted_folio.h"
#include "app/command_line/messages.h"
#include "app/command_line/pencil_work.h"
#include "app/command_line/shared_options.h"
#include "core/store/text_formats.h"
#include "core/store/whole_file.h"

namespace coutil {
namespace {

constexpr std::array kOptions{
    OptionSpec{"--alterations", "A.json", false,
               QT_TRANSLATE_NOOP("CommandLine", "the alterations to add")},
    OptionSpec{"--measurements", "M.json", false,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "new readings: the block is drafted from them and every "
                                 "alteration applied again")},
    OptionSpec{"--style", "S.json", false,
               QT_TRANSLATE_NOOP("CommandLine", "another style, in the same way")},
    OptionSpec{"--revision", "ID", false,
               QT_TRANSLATE_NOOP("CommandLine",
                                 "what they are for: a number (a pencil begins from it), pencil "
                                 "or latest (latest)")},
    kGarmentOption,
    kPencilOption,
    kDateOption,
    kHelpOption};

Alteration alterationOf(PencilWork& work, Change change) {
    return {.id = work.ids.next("alteration"), .change = std::move(change)};
}

// Reads one of the call's files into the pencil; problems as reading has them.
template <class Value, class Add>
std::vector<Problem> addFrom(const std::optional<std::string>& text,
                             Outcome<Value> (*read)(std::string_view), const Add& add) {
    if (!text) return {};
    Outcome<Value> value = read(*text);
    if (!value) return std::move(value.problems);
    add(std::move(*value));
    return {};
}

// The text of an option's file; nothing where the option is not there.
std::optional<std::string> textOf(const Call& call, std::string_view option,
                                  std::vector<Problem>& problems) {
    const auto file = call.value(option);
    if (!file) return std::nullopt;
    Outcome<std::string> text = readWholeFile(*file);
    problems.insert(problems.end(), text.problems.begin(), text.problems.end());
    return std::move(text.value);
}

struct Texts {
    std::optional<std::string> style;
    std::optional<std::string> measurements;
    std::optional<std::string> alterations;
};

std::vector<Problem> addAll(PencilWork& work, const Texts& texts) {
    Pencil& pencil = work.changed();
    const auto append = [&](Change change) {
        pencil.alterations.push_back(alterationOf(work, std::move(change)));
    };
    auto problems = addFrom<Style>(texts.style, readStyleJson,
                                   [&](Style style) { append(ChangeStyle{std::move(style)}); });
    if (problems.empty()) {
        problems = addFrom<MeasurementSet>(
            texts.measurements, readMeasurementsJson, [&](MeasurementSet set) {
                if (set.takenOn.empty()) set.takenOn = work.date;
                append(TakeMeasurements{enterMeasurementSet(work.folio, std::move(set), work.ids)});
            });
    }
    if (!problems.empty() || !texts.alterations) return problems;
    auto alterations =
        readAlterationsJson(*texts.alterations, [&] { return work.ids.next("alteration"); });
    if (!alterations) return std::move(alterations.problems);
    pencil.alterations.insert(pencil.alterations.end(), alterations->begin(), alterations->end());
    return {};
}

ExitCode run(const Call& call) {
    std::vector<Problem> problems;
    const Texts texts{textOf(call, "--style", problems), textOf(call, "--measurements", problems),
                      textOf(call, "--alterations", problems)};
    if (!problems.empty()) return failedBy(problems);
    if (!texts.style && !texts.measurements && !texts.alterations) {
        Problem nothing;
        nothing.code = ProblemCode::callIncomplete;
        nothing.subject = call.command;
        nothing.detail = "--alterations A.json | --measurements M.json | --style S.json";
        return failedBy({nothing});
    }
    Outcome<PencilWork> work = beginPencilWork(
        call,
        texts.style.value_or("") + texts.measurements.value_or("") + texts.alterations.value_or(""),
        call.value("--revision").value_or("latest"));
    if (!work) return failedBy(work.problems);
    const std::vector<Problem> before = problemsNow(*work);
    problems = addAll(*work, texts);
    if (problems.empty()) problems = writePencilWork(*work, call, before);
    return problems.empty() ? ExitCode::done : failedBy(problems, work->folio.unit);
}

}  // namespace

Command alterCommand() {
    return {{"alter", "F.coutil", kOptions, {}, {}},
            QT_TRANSLATE_NOOP("CommandLine", "adds alterations to the pencil"),
            &run};
}

}  // namespace coutil
