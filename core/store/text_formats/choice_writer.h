#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/geometry/point.h"
#include "core/store/text_formats/style_names.h"

namespace coutil::text_formats {

// Writes members one after the other into an object; what is absent is left out. Its like for
// reading is ChoiceReader, so that one list of members serves both. For .cpp files that may know
// JSON.
class ChoiceWriter {
  public:
    explicit ChoiceWriter(nlohmann::ordered_json& json) : json_(json) {}

    template <class Value>
    void text(const char* key, const Value& value) {
        put(key, value);
    }
    template <class Value>
    void truth(const char* key, const Value& value) {
        put(key, value);
    }
    template <class Value>
    void length(const char* key, const Value& mm) {
        put(key, mm);
    }
    template <class Value>
    void number(const char* key, const Value& value) {
        put(key, value);
    }
    void numbers(const char* key, const std::vector<double>& values) { json_[key] = values; }
    void texts(const char* key, const std::vector<std::string>& values) {
        if (!values.empty()) json_[key] = values;
    }
    void numbersByName(const char* key, const std::map<std::string, double>& values) {
        if (!values.empty()) json_[key] = values;
    }
    void point(const char* key, const std::optional<Point>& point) {
        if (point) json_[key] = {point->x(), point->y()};
    }
    template <class Names, class Value>
    void choice(const char* key, const Names& names, const Value& value) {
        json_[key] = nameOf(names, value);
    }
    template <class Names, class Value>
    void choice(const char* key, const Names& names, const std::optional<Value>& value) {
        if (value) json_[key] = nameOf(names, *value);
    }
    template <class Value, class Pass>
    void object(const char* key, const Value& value, const Pass& pass) {
        nlohmann::ordered_json inner = nlohmann::ordered_json::object();
        ChoiceWriter writer(inner);
        pass(writer, value);
        json_[key] = std::move(inner);
    }
    template <class Value, class Pass>
    void object(const char* key, const std::optional<Value>& value, const Pass& pass) {
        if (value) object(key, *value, pass);
    }
    template <class Value, class Pass>
    void list(const char* key, const std::vector<Value>& values, const Pass& pass) {
        nlohmann::ordered_json all = nlohmann::ordered_json::array();
        for (const Value& value : values) {
            nlohmann::ordered_json inner = nlohmann::ordered_json::object();
            ChoiceWriter writer(inner);
            pass(writer, value);
            all.push_back(std::move(inner));
        }
        json_[key] = std::move(all);
    }

  private:
    template <class Value>
    void put(const char* key, const Value& value) {
        json_[key] = value;
    }
    template <class Value>
    void put(const char* key, const std::optional<Value>& value) {
        if (value) json_[key] = *value;
    }

    nlohmann::ordered_json& json_;
};

}  // namespace coutil::text_formats
