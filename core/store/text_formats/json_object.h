#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/problems/problem.h"
#include "core/units/length.h"

namespace coutil::text_formats {

// The JSON of a text. Problem jsonBroken names line and column (figure "bytes" alone: an empty
// text); a text over 16 MB, one nested deeper than 32 and a key that stands twice in one object are
// refused too.
[[nodiscard]] Outcome<nlohmann::json> parsedJson(std::string_view text);

// One JSON object being read. Every member is asked for by name; what nobody asked for is unknown.
// What is wrong joins `problems`, its subject the path of the key ("values.bust_girth"); a member
// that is absent is no problem, one of the wrong type reads as absent. Keeps references: the JSON
// value and the list of problems must outlive it.
class JsonObject {
  public:
    JsonObject(const nlohmann::json& object, std::string path, std::vector<Problem>& problems);

    // The member of that name, or nullptr; known from now on.
    [[nodiscard]] const nlohmann::json* member(std::string_view key);

    [[nodiscard]] std::optional<std::string> text(std::string_view key);
    [[nodiscard]] std::optional<bool> truth(std::string_view key);
    [[nodiscard]] std::optional<double> number(std::string_view key);
    [[nodiscard]] std::optional<int> wholeNumber(std::string_view key);
    [[nodiscard]] std::optional<std::vector<double>> numbers(std::string_view key);
    // A list of lists of two numbers, and a list of texts.
    [[nodiscard]] std::optional<std::vector<std::array<double, 2>>> pairs(std::string_view key);
    [[nodiscard]] std::optional<std::vector<std::string>> texts(std::string_view key);
    // Whether a member of that name is there, and what stands there, short enough for a message.
    [[nodiscard]] bool has(std::string_view key);
    [[nodiscard]] std::string asWritten(std::string_view key);
    // Whether the member is exactly this text.
    [[nodiscard]] bool isWord(std::string_view key, std::string_view word);
    // A number in `unit`, or a text like "2 1/2 in".
    [[nodiscard]] std::optional<double> lengthMm(std::string_view key, LengthUnit unit);
    [[nodiscard]] std::optional<JsonObject> object(std::string_view key);
    // Every member of a list, each an object.
    [[nodiscard]] std::vector<JsonObject> objects(std::string_view key);
    // One of the names of `choices`; jsonWantsChoice lists them.
    template <class Value>
    [[nodiscard]] std::optional<Value> choice(std::string_view key,
                                              const std::map<std::string, Value>& choices);

    // All names in this object, in the order of the alphabet.
    [[nodiscard]] std::vector<std::string> names() const;
    // One problem per name nobody asked for; the detail is the known name nearest to it, if one is
    // near.
    void refuseUnknown(ProblemCode code);
    void report(ProblemCode code, std::string_view key, std::string detail);
    [[nodiscard]] std::string pathOf(std::string_view key) const;

  private:
    [[nodiscard]] std::optional<std::string> chosenAmong(std::string_view key,
                                                         const std::vector<std::string>& names);

    const nlohmann::json* object_;
    std::string path_;
    std::vector<Problem>* problems_;
    std::vector<std::string> known_;
};

template <class Value>
std::optional<Value> JsonObject::choice(std::string_view key,
                                        const std::map<std::string, Value>& choices) {
    std::vector<std::string> names;
    names.reserve(choices.size());
    for (const auto& [name, value] : choices) names.push_back(name);
    const auto chosen = chosenAmong(key, names);
    if (!chosen) return std::nullopt;
    return choices.at(*chosen);
}

// The JSON of a text that must be an object of this `kind` ("measurements"), version 1. Problems of
// parsedJson(), jsonWrongKind, jsonWrongVersion.
[[nodiscard]] Outcome<nlohmann::json> parsedKind(std::string_view text, std::string_view kind);

// For members that parsedKind() has looked at already.
void passKind(JsonObject& top);

// The name among `known` that `name` was probably meant to be; empty when none is near.
[[nodiscard]] std::string nearestName(std::string_view name, const std::vector<std::string>& known);

}  // namespace coutil::text_formats
