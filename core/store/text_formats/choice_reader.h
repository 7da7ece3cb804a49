#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/store/text_formats/json_object.h"

namespace coutil::text_formats {

// Reads members one after the other; one that is absent leaves the value as it was. Its like for
// writing is ChoiceWriter. The owner refuses what nobody asked for.
class ChoiceReader {
  public:
    explicit ChoiceReader(JsonObject& object) : object_(object) {}

    template <class Value>
    void text(const char* key, Value& value) {
        take(object_.text(key), value);
    }
    template <class Value>
    void truth(const char* key, Value& value) {
        take(object_.truth(key), value);
    }
    template <class Value>
    void length(const char* key, Value& mm) {
        take(object_.lengthMm(key, LengthUnit::millimetre), mm);
    }
    template <class Value>
    void number(const char* key, Value& value) {
        take(object_.number(key), value);
    }
    void numbers(const char* key, std::vector<double>& values) {
        take(object_.numbers(key), values);
    }
    void texts(const char* key, std::vector<std::string>& values) {
        take(object_.texts(key), values);
    }
    void numbersByName(const char* key, std::map<std::string, double>& values) {
        auto inner = object_.object(key);
        if (!inner) return;
        values.clear();
        for (const std::string& name : inner->names()) {
            if (const auto number = inner->number(name)) values[name] = *number;
        }
    }
    void point(const char* key, std::optional<Point>& point) {
        const auto numbers = object_.numbers(key);
        if (!numbers) return;
        if (numbers->size() == 2) {
            point = Point((*numbers)[0], (*numbers)[1]);
        } else {
            object_.report(ProblemCode::jsonWantsNumberList, key, object_.asWritten(key));
        }
    }
    template <class Value, class Chosen>
    void choice(const char* key, const std::map<std::string, Value>& names, Chosen& value) {
        take(object_.choice(key, names), value);
    }
    template <class Value, class Pass>
    void object(const char* key, Value& value, const Pass& pass) {
        if (auto inner = object_.object(key)) passInto(*inner, value, pass);
    }
    template <class Value, class Pass>
    void object(const char* key, std::optional<Value>& value, const Pass& pass) {
        if (auto inner = object_.object(key)) passInto(*inner, value.emplace(), pass);
    }
    template <class Value, class Pass>
    void list(const char* key, std::vector<Value>& values, const Pass& pass) {
        if (!object_.has(key)) return;
        values.clear();
        for (JsonObject& inner : object_.objects(key)) passInto(inner, values.emplace_back(), pass);
    }

  private:
    template <class Found, class Value>
    static void take(std::optional<Found> found, Value& into) {
        if (found) into = std::move(*found);
    }
    template <class Value, class Pass>
    static void passInto(JsonObject& inner, Value& value, const Pass& pass) {
        ChoiceReader reader(inner);
        pass(reader, value);
        inner.refuseUnknown(ProblemCode::jsonUnknownKey);
    }

    JsonObject& object_;
};

}  // namespace coutil::text_formats
