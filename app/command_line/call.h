#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/problems/problem.h"

namespace coutil {

// One option a command takes.
struct OptionSpec {
    std::string_view name;   // "--style", "-o"
    std::string_view value;  // what follows it, as help shows it ("S.json"); empty: nothing
    bool isRepeatable = false;
    const char* help = "";  // English, marked for translation
};

// What was typed after a command's name.
class Call {
  public:
    std::string command;
    std::vector<std::string> operands;
    std::map<std::string, std::vector<std::string>, std::less<>> values;  // by option

    [[nodiscard]] bool has(std::string_view option) const { return values.contains(option); }
    [[nodiscard]] std::optional<std::string> value(std::string_view option) const;
    [[nodiscard]] std::vector<std::string> all(std::string_view option) const;
};

// What a command's call must be made of.
struct CallForm {
    std::string_view command;
    // The operands, as help shows them, with blanks between ("F.coutil A B"); empty: none.
    std::string_view operand;
    std::span<const OptionSpec> options;
    std::span<const std::string_view> required;  // options that must be there
    std::span<const std::string_view> formats;   // exactly one of these must be there, if any
};

// Reads "--name VALUE", "--name=VALUE" and "-o VALUE"; "--" ends the options. Every fault is a
// problem of its own: optionUnknown (the detail is the command), optionWithoutValue, optionTwice,
// operandUnexpected, callIncomplete, optionsExclude. A call with --help is never incomplete.
[[nodiscard]] Outcome<Call> readCall(const CallForm& form, std::span<const std::string> words);

}  // namespace coutil
