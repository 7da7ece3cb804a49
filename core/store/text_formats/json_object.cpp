#include "core/store/text_formats/json_object.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <nlohmann/json.hpp>

namespace coutil::text_formats {

namespace {

using Json = nlohmann::json;

// As far as readLengthMm() goes.
constexpr double kFarthestMm = 100'000;

// What stands there, short enough for one line of a message.
std::string shown(const Json& value) {
    constexpr std::size_t kLongest = 40;
    std::string text = value.is_string()
                           ? value.get<std::string>()
                           : value.dump(-1, ' ', true, nlohmann::detail::error_handler_t::replace);
    if (text.size() > kLongest) {
        std::size_t end = kLongest;
        // Never in the middle of a UTF-8 character.
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
        text = text.substr(0, end) + "...";
    }
    return text;
}

}  // namespace

JsonObject::JsonObject(const Json& object, std::string path, std::vector<Problem>& problems)
    : object_(&object), path_(std::move(path)), problems_(&problems) {}

const Json* JsonObject::member(std::string_view key) {
    known_.emplace_back(key);
    const auto found = object_->find(key);
    return found == object_->end() ? nullptr : &*found;
}

std::optional<std::string> JsonObject::text(std::string_view key) {
    const Json* value = member(key);
    if (value == nullptr) return std::nullopt;
    if (value->is_string()) return value->get<std::string>();
    report(ProblemCode::jsonWantsText, key, shown(*value));
    return std::nullopt;
}

std::optional<bool> JsonObject::truth(std::string_view key) {
    const Json* value = member(key);
    if (value == nullptr) return std::nullopt;
    if (value->is_boolean()) return value->get<bool>();
    report(ProblemCode::jsonWantsTruth, key, shown(*value));
    return std::nullopt;
}

std::optional<double> JsonObject::number(std::string_view key) {
    const Json* value = member(key);
    if (value == nullptr) return std::nullopt;
    if (value->is_number()) return value->get<double>();
    report(ProblemCode::jsonWantsNumber, key, shown(*value));
    return std::nullopt;
}

std::optional<int> JsonObject::wholeNumber(std::string_view key) {
    const auto value = number(key);
    if (!value) return std::nullopt;
    constexpr double kLargest = 1e6;
    if (*value == std::floor(*value) && std::abs(*value) <= kLargest) {
        return static_cast<int>(*value);
    }
    report(ProblemCode::jsonWantsWholeNumber, key, shown(*member(key)));
    return std::nullopt;
}

std::optional<std::vector<double>> JsonObject::numbers(std::string_view key) {
    const Json* list = member(key);
    if (list == nullptr) return std::nullopt;
    if (!list->is_array() ||
        !std::ranges::all_of(*list, [](const Json& value) { return value.is_number(); })) {
        report(ProblemCode::jsonWantsNumberList, key, shown(*list));
        return std::nullopt;
    }
    return list->get<std::vector<double>>();
}

std::optional<std::vector<std::array<double, 2>>> JsonObject::pairs(std::string_view key) {
    const Json* list = member(key);
    if (list == nullptr) return std::nullopt;
    std::vector<std::array<double, 2>> pairs;
    const auto isPair = [](const Json& value) {
        return value.is_array() && value.size() == 2 && value[0].is_number() &&
               value[1].is_number();
    };
    if (!list->is_array() || !std::ranges::all_of(*list, isPair)) {
        report(ProblemCode::jsonWantsPairs, key, shown(*list));
        return std::nullopt;
    }
    for (const Json& pair : *list) pairs.push_back({pair[0].get<double>(), pair[1].get<double>()});
    return pairs;
}

std::optional<std::vector<std::string>> JsonObject::texts(std::string_view key) {
    const Json* list = member(key);
    if (list == nullptr) return std::nullopt;
    if (!list->is_array() ||
        !std::ranges::all_of(*list, [](const Json& value) { return value.is_string(); })) {
        report(ProblemCode::jsonWantsTextList, key, shown(*list));
        return std::nullopt;
    }
    return list->get<std::vector<std::string>>();
}

bool JsonObject::has(std::string_view key) { return member(key) != nullptr; }

std::string JsonObject::asWritten(std::string_view key) {
    const Json* value = member(key);
    return value == nullptr ? std::string{} : shown(*value);
}

bool JsonObject::isWord(std::string_view key, std::string_view word) {
    const Json* value = member(key);
    return value != nullptr && value->is_string() && value->get<std::string>() == word;
}

std::optional<double> JsonObject::lengthMm(std::string_view key, LengthUnit unit) {
    const Json* value = member(key);
    if (value == nullptr) return std::nullopt;
    if (value->is_number()) {
        const double mm = value->get<double>() * millimetresIn(unit);
        if (std::abs(mm) <= kFarthestMm) return mm;
        report(ProblemCode::lengthOutOfRange, key, shown(*value));
        return std::nullopt;
    }
    if (!value->is_string()) {
        report(ProblemCode::jsonWantsLength, key, shown(*value));
        return std::nullopt;
    }
    auto read = readLengthMm(value->get<std::string>(), unit);
    for (Problem& problem : read.problems) {
        problem.subject = pathOf(key);
        problem.detail = shown(*value);
        problems_->push_back(std::move(problem));
    }
    return read.value;
}

std::optional<JsonObject> JsonObject::object(std::string_view key) {
    const Json* value = member(key);
    if (value == nullptr) return std::nullopt;
    if (value->is_object()) return JsonObject(*value, pathOf(key), *problems_);
    report(ProblemCode::jsonWantsObject, key, shown(*value));
    return std::nullopt;
}

std::vector<JsonObject> JsonObject::objects(std::string_view key) {
    const Json* list = member(key);
    if (list == nullptr) return {};
    std::vector<JsonObject> objects;
    if (list->is_array()) {
        for (const Json& value : *list) {
            if (!value.is_object()) break;
            objects.emplace_back(value, pathOf(key) + "[" + std::to_string(objects.size()) + "]",
                                 *problems_);
        }
        if (objects.size() == list->size()) return objects;
    }
    report(ProblemCode::jsonWantsObjectList, key, shown(*list));
    return {};
}

std::optional<std::string> JsonObject::chosenAmong(std::string_view key,
                                                   const std::vector<std::string>& names) {
    const Json* value = member(key);
    if (value == nullptr) return std::nullopt;
    if (value->is_string()) {
        const auto found = std::ranges::find(names, value->get<std::string>());
        if (found != names.end()) return *found;
    }
    std::string all;
    for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
    report(ProblemCode::jsonWantsChoice, key, all);
    return std::nullopt;
}

std::vector<std::string> JsonObject::names() const {
    std::vector<std::string> names;
    for (const auto& item : object_->items()) names.push_back(item.key());
    return names;
}

void JsonObject::refuseUnknown(ProblemCode code) {
    for (const std::string& name : names()) {
        if (std::ranges::find(known_, name) != known_.end()) continue;
        report(code, shown(name), nearestName(name, known_));
    }
}

void JsonObject::report(ProblemCode code, std::string_view key, std::string detail) {
    Problem problem;
    problem.code = code;
    problem.subject = pathOf(key);
    problem.detail = std::move(detail);
    problems_->push_back(std::move(problem));
}

std::string JsonObject::pathOf(std::string_view key) const {
    return path_.empty() ? std::string(key) : path_ + "." + std::string(key);
}

Outcome<Json> parsedKind(std::string_view text, std::string_view kind) {
    auto json = parsedJson(text);
    if (!json) return json;
    std::vector<Problem> problems;
    static const Json kEmpty = Json::object();
    JsonObject top(json->is_object() ? *json : kEmpty, {}, problems);
    const Json* found = top.member("coutil");
    if (found == nullptr || !found->is_string() || found->get<std::string>() != kind) {
        top.report(ProblemCode::jsonWrongKind, "coutil", std::string(kind));
        return Outcome<Json>::failed(std::move(problems));
    }
    const Json* version = top.member("version");
    if (version == nullptr || !version->is_number() || version->get<double>() != 1) {
        top.report(ProblemCode::jsonWrongVersion, "version",
                   version == nullptr ? "" : shown(*version));
        return Outcome<Json>::failed(std::move(problems));
    }
    return json;
}

void passKind(JsonObject& top) {
    (void)top.member("coutil");
    (void)top.member("version");
}

}  // namespace coutil::text_formats
