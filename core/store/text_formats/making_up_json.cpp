#include <nlohmann/json.hpp>

#include "core/store/making_up_formats.h"
#include "core/store/text_formats/choice_reader.h"
#include "core/store/text_formats/choice_writer.h"
#include "core/store/text_formats/making_up_members.h"

namespace coutil {

namespace {

using text_formats::ChoiceReader;
using text_formats::ChoiceWriter;
using text_formats::JsonObject;

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
