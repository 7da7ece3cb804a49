#include "app/command_line/draft_input.h"

#include <algorithm>
#include <utility>

#include "core/store/style_entry.h"
#include "core/store/text_formats.h"
#include "core/store/whole_file.h"

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, std::string subject, std::string detail) {
    Problem problem;
    problem.code = code;
    problem.subject = std::move(subject);
    problem.detail = std::move(detail);
    return problem;
}

// Reads a file in one of the text formats into `into`. A problem of the file names it itself; one
// of the text inside doesn't.
template <class Value>
void readInto(const std::string& file, Outcome<Value> (*read)(std::string_view), Value& into,
              std::vector<InputFault>& faults) {
    const Outcome<std::string> text = readWholeFile(file);
    if (!text) return faults.push_back({"", text.problems});
    Outcome<Value> value = read(*text);
    if (!value) return faults.push_back({file, std::move(value.problems)});
    into = std::move(*value);
}

std::vector<Problem> setMeasurement(Measurement id, const std::string& name,
                                    const std::string& value, MeasurementSet& set) {
    Outcome<double> mm = readLengthMm(value, set.unit);
    if (!mm) {
        for (Problem& problem : mm.problems) problem.subject = name;
        return std::move(mm.problems);
    }
    set.valuesMm[id] = *mm;
    set.asWritten[id] = value;
    return {};
}

std::vector<Problem> setEntry(const std::string& setting, DraftInput& input) {
    const std::size_t equals = setting.find('=');
    if (equals == 0 || equals == std::string::npos)
        return {problemOf(ProblemCode::optionWithoutValue, "--set", "NAME=VALUE")};
    const std::string name = setting.substr(0, equals);
    const std::string value = setting.substr(equals + 1);
    if (const auto id = measurementNamed(name)) return setMeasurement(*id, name, value, input.set);
    Outcome<Style> style = styleWithEntry(input.style, name, value);
    if (!style) return std::move(style.problems);
    input.style = std::move(*style);
    return {};
}

}  // namespace

ReadInput readDraftInput(const Call& call) {
    ReadInput read;
    readInto(call.value("--measurements").value_or(""), readMeasurementsJson, read.input.set,
             read.faults);
    if (const auto file = call.value("--style"))
        readInto(*file, readStyleJson, read.input.style, read.faults);
    for (const std::string& setting : call.all("--set")) {
        if (auto problems = setEntry(setting, read.input); !problems.empty())
            read.faults.push_back({"--set " + setting, std::move(problems)});
    }
    return read;
}

}  // namespace coutil
