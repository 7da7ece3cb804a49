#include "app/command_line/sheet_choices.h"

#include <charconv>
#include <cmath>
#include <optional>
#include <string>

#include "core/units/length.h"

namespace coutil {
namespace {

constexpr double kHighestEffort = 100;
constexpr double kUmPerMm = 1000;

// Reads options one by one and keeps what is wrong with them.
class ChoiceReader {
  public:
    explicit ChoiceReader(const Call& call) : call_(call) {}

    void takeLength(const char* option, long long SheetOptions::*um, SheetOptions& options);
    void takeFactor(const char* option, double& factor);
    void takeEffort(double& effort);
    void takeSeed(std::uint32_t& seed);
    void takePaper(Paper& paper);
    void takeOrientation(Orientation& orientation);
    [[nodiscard]] std::vector<Problem>& problems() { return problems_; }

  private:
    void refuse(const char* option, const std::string& text, std::vector<Figure> figures = {});
    template <class Number>
    std::optional<Number> numberOf(const char* option);

    const Call& call_;
    std::vector<Problem> problems_;
};

void ChoiceReader::refuse(const char* option, const std::string& text,
                          std::vector<Figure> figures) {
    Problem problem;
    problem.code = ProblemCode::optionBadValue;
    problem.subject = option;
    problem.detail = text;
    problem.figures = std::move(figures);
    problems_.push_back(std::move(problem));
}

template <class Number>
std::optional<Number> ChoiceReader::numberOf(const char* option) {
    const auto text = call_.value(option);
    if (!text) return std::nullopt;
    Number number{};
    const char* end = text->data() + text->size();
    const auto read = std::from_chars(text->data(), end, number);
    if (read.ec == std::errc() && read.ptr == end) return number;
    refuse(option, *text);
    return std::nullopt;
}

// The range of a length, as the check of the options itself tells it.
std::vector<Figure> rangeOf(long long SheetOptions::*um, const SheetOptions& options) {
    SheetOptions wrong = options;
    wrong.*um = -1;
    for (const Problem& problem : checkSheetOptions(wrong))
        if (problem.code == ProblemCode::sheetOptionOutOfRange) return problem.figures;
    return {};
}

void ChoiceReader::takeLength(const char* option, long long SheetOptions::*um,
                              SheetOptions& options) {
    const auto text = call_.value(option);
    if (!text) return;
    const Outcome<double> mm = readLengthMm(*text, LengthUnit::millimetre);
    if (!mm || *mm < 0) return refuse(option, *text, rangeOf(um, options));
    options.*um = std::llround(*mm * kUmPerMm);
}

void ChoiceReader::takeFactor(const char* option, double& factor) {
    if (const auto number = numberOf<double>(option)) factor = *number;
}

void ChoiceReader::takeEffort(double& effort) {
    const auto number = numberOf<double>("--effort");
    if (!number) return;
    if (*number >= 0 && *number <= kHighestEffort) {
        effort = *number;
        return;
    }
    refuse("--effort", *call_.value("--effort"),
           {{"lowest", 0, FigureUnit::count}, {"highest", kHighestEffort, FigureUnit::count}});
}

void ChoiceReader::takeSeed(std::uint32_t& seed) {
    if (const auto number = numberOf<std::uint32_t>("--seed")) seed = *number;
}

void ChoiceReader::takePaper(Paper& paper) {
    if (call_.has("--one-page")) {
        paper = onePage();
        return;
    }
    Outcome<Paper> named = paperNamed(*call_.value("--paper"));
    if (named) paper = *named;
    problems_.insert(problems_.end(), named.problems.begin(), named.problems.end());
}

void ChoiceReader::takeOrientation(Orientation& orientation) {
    const bool isPortrait = call_.has("--portrait");
    if (call_.has("--landscape")) orientation = Orientation::landscape;
    if (isPortrait) orientation = Orientation::portrait;
    if (!isPortrait || !call_.has("--landscape")) return;
    Problem problem;
    problem.code = ProblemCode::optionsExclude;
    problem.subject = "--portrait";
    problem.detail = "--landscape";
    problems_.push_back(std::move(problem));
}

}  // namespace

Outcome<SheetChoices> readSheetChoices(const Call& call) {
    SheetChoices choices;
    ChoiceReader reader(call);
    reader.takePaper(choices.options.paper);
    reader.takeOrientation(choices.options.orientation);
    reader.takeLength("--margin", &SheetOptions::marginUm, choices.options);
    reader.takeLength("--overlap", &SheetOptions::overlapUm, choices.options);
    reader.takeFactor("--scale-x", choices.options.scaleX);
    reader.takeFactor("--scale-y", choices.options.scaleY);
    reader.takeSeed(choices.seed);
    reader.takeEffort(choices.effort);
    choices.options.mirroredToo = call.has("--mirrored-too");
    std::vector<Problem> problems = std::move(reader.problems());
    if (problems.empty()) problems = checkSheetOptions(choices.options);
    if (!problems.empty()) return Outcome<SheetChoices>::failed(std::move(problems));
    return choices;
}

Outcome<SheetPlan> plannedSheets(const std::vector<Tracing>& tracings,
                                 const SheetChoices& choices) {
    if (choices.effort == 0) return planSheets(tracings, choices.options);
    return planFewerSheets(tracings, choices.options, choices.seed, choices.effort);
}

}  // namespace coutil
