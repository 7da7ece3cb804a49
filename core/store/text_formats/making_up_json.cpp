#include <nlohmann/json.hpp>

#include "core/store/making_up_formats.h"
#include "core/store/text_formats/choice_reader.h"
#include "core/store/text_formats/making_up_members.h"

namespace coutil {

namespace {

using text_formats::ChoiceReader;
using text_formats::JsonObject;
using text_formats::nameOf;

// Writes members one after the other into an object; what is absent is left out. Its like for
// reading is ChoiceReader, so that one list of members serves both.
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

template <class Choices, class Pass>
Outcome<Choices> readChoices(std::string_view text, std::string_view kind, const Pass& pass) {
    const auto json = text_formats::parsedKind(text, kind);
    if (!json) return Outcome<Choices>::failed(json.problems);
    std::vector<Problem> problems;
    JsonObject top(*json, {}, problems);
    text_formats::passKind(top);
    Choices choices;
    ChoiceReader reader(top);
    pass(reader, choices);
    top.refuseUnknown(ProblemCode::jsonUnknownKey);
    if (!problems.empty()) return Outcome<Choices>::failed(std::move(problems));
    return choices;
}

template <class Choices, class Pass>
std::string writeChoices(const Choices& choices, const char* kind, const Pass& pass) {
    nlohmann::ordered_json json;
    json["coutil"] = kind;
    json["version"] = 1;
    ChoiceWriter writer(json);
    pass(writer, choices);
    return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + "\n";
}

}  // namespace

namespace text_formats {

const std::map<std::string, BoneKind>& boneKindNames() {
    static const std::map<std::string, BoneKind> names{{"flat_steel", BoneKind::flatSteel},
                                                       {"spiral_steel", BoneKind::spiralSteel},
                                                       {"synthetic", BoneKind::synthetic}};
    return names;
}

const std::map<std::string, ChannelCarrier>& carrierNames() {
    static const std::map<std::string, ChannelCarrier> names{
        {"own_allowance", ChannelCarrier::ownAllowance}, {"tape", ChannelCarrier::tape}};
    return names;
}

const std::map<std::string, PanelSide>& panelSideNames() {
    static const std::map<std::string, PanelSide> names{
        {"both", PanelSide::both}, {"left", PanelSide::left}, {"right", PanelSide::right}};
    return names;
}

const std::map<std::string, NotchShape>& notchShapeNames() {
    static const std::map<std::string, NotchShape> names{
        {"slit", NotchShape::slit}, {"vee", NotchShape::vee}, {"tick", NotchShape::tick}};
    return names;
}

const std::map<std::string, LinesShown>& linesShownNames() {
    static const std::map<std::string, LinesShown> names{{"sewing", LinesShown::sewing},
                                                         {"cutting", LinesShown::cutting},
                                                         {"both", LinesShown::both}};
    return names;
}

}  // namespace text_formats

Outcome<MakingUpChoices> readMakingUpJson(std::string_view text) {
    return readChoices<MakingUpChoices>(
        text, "making_up", [](auto& m, auto& choices) { text_formats::passMakingUp(m, choices); });
}

std::string writeMakingUpJson(const MakingUpChoices& choices) {
    return writeChoices(choices, "making_up",
                        [](auto& m, const auto& each) { text_formats::passMakingUp(m, each); });
}

Outcome<TracingChoices> readTracingChoicesJson(std::string_view text) {
    return readChoices<TracingChoices>(text, "tracing_choices", [](auto& m, auto& choices) {
        text_formats::passTracing(m, choices);
    });
}

std::string writeTracingChoicesJson(const TracingChoices& choices) {
    return writeChoices(choices, "tracing_choices",
                        [](auto& m, const auto& each) { text_formats::passTracing(m, each); });
}

}  // namespace coutil
