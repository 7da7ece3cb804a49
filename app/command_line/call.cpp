#include "app/command_line/call.h"

#include <algorithm>
#include <utility>

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, std::string subject, std::string detail = {}) {
    Problem problem;
    problem.code = code;
    problem.subject = std::move(subject);
    problem.detail = std::move(detail);
    return problem;
}

// Reads the words one after the other.
class CallReader {
  public:
    CallReader(const CallForm& form, std::span<const std::string> words)
        : form_(form), words_(words) {
        call_.command = form.command;
    }

    Outcome<Call> read();

  private:
    void takeOption(const std::string& word);
    void takeOperand(const std::string& word);
    void checkComplete();
    [[nodiscard]] std::size_t operandCount() const;
    void checkFormats();
    void report(ProblemCode code, std::string subject, std::string detail = {}) {
        problems_.push_back(problemOf(code, std::move(subject), std::move(detail)));
    }

    const CallForm& form_;
    std::span<const std::string> words_;
    std::size_t next_ = 0;
    Call call_;
    std::vector<Problem> problems_;
};

bool isOption(const std::string& word) { return word.size() > 1 && word.front() == '-'; }

void CallReader::takeOption(const std::string& word) {
    const std::size_t equals = word.starts_with("--") ? word.find('=') : std::string::npos;
    const std::string name = word.substr(0, equals);
    const auto spec = std::ranges::find(form_.options, name, &OptionSpec::name);
    if (spec == form_.options.end()) return report(ProblemCode::optionUnknown, name, call_.command);
    std::string value;
    const bool hasEquals = equals != std::string::npos;
    if (spec->value.empty()) {
        if (hasEquals) return report(ProblemCode::optionBadValue, name, word.substr(equals + 1));
    } else if (hasEquals) {
        value = word.substr(equals + 1);
    } else if (next_ < words_.size() && !words_[next_].starts_with("--")) {
        value = words_[next_++];
    } else {
        return report(ProblemCode::optionWithoutValue, name, std::string(spec->value));
    }
    auto& given = call_.values[name];
    given.push_back(std::move(value));
    if (given.size() == 2 && !spec->isRepeatable) report(ProblemCode::optionTwice, name);
}

void CallReader::takeOperand(const std::string& word) {
    if (call_.operands.size() == operandCount())
        return report(ProblemCode::operandUnexpected, word, call_.command);
    call_.operands.push_back(word);
}

std::size_t CallReader::operandCount() const {
    if (form_.operand.empty()) return 0;
    return 1 + static_cast<std::size_t>(std::ranges::count(form_.operand, ' '));
}

void CallReader::checkFormats() {
    std::vector<std::string> given;
    std::string choice;
    for (const std::string_view format : form_.formats) {
        if (call_.has(format)) given.emplace_back(format);
        choice += (choice.empty() ? "" : " | ") + std::string(format);
    }
    if (given.empty() && !form_.formats.empty())
        report(ProblemCode::callIncomplete, call_.command, choice);
    if (given.size() > 1) report(ProblemCode::optionsExclude, given[0], given[1]);
}

void CallReader::checkComplete() {
    if (call_.operands.size() < operandCount())
        report(ProblemCode::callIncomplete, call_.command, std::string(form_.operand));
    for (const std::string_view name : form_.required) {
        if (call_.has(name)) continue;
        const auto spec = std::ranges::find(form_.options, name, &OptionSpec::name);
        report(ProblemCode::callIncomplete, call_.command,
               std::string(name) + " " + std::string(spec->value));
    }
    checkFormats();
}

Outcome<Call> CallReader::read() {
    bool isPastOptions = false;
    while (next_ < words_.size()) {
        const std::string& word = words_[next_++];
        if (word == "--" && !isPastOptions) {
            isPastOptions = true;
        } else if (isOption(word) && !isPastOptions) {
            takeOption(word);
        } else {
            takeOperand(word);
        }
    }
    if (problems_.empty() && !call_.has("--help")) checkComplete();
    if (!problems_.empty()) return Outcome<Call>::failed(std::move(problems_));
    return std::move(call_);
}

}  // namespace

std::optional<std::string> Call::value(std::string_view option) const {
    const auto found = values.find(option);
    if (found == values.end()) return std::nullopt;
    return found->second.back();
}

std::vector<std::string> Call::all(std::string_view option) const {
    const auto found = values.find(option);
    return found == values.end() ? std::vector<std::string>() : found->second;
}

Outcome<Call> readCall(const CallForm& form, std::span<const std::string> words) {
    return CallReader(form, words).read();
}

}  // namespace coutil
