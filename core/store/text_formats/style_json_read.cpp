#include <nlohmann/json.hpp>

#include "core/store/text_formats.h"
#include "core/store/text_formats/json_object.h"
#include "core/store/text_formats/style_json.h"
#include "core/store/text_formats/style_names.h"

namespace coutil {

namespace {

using text_formats::JsonObject;

constexpr auto kMm = LengthUnit::millimetre;

template <class Value>
void take(std::optional<Value> found, Value& into) {
    if (found) into = std::move(*found);
}

void takeHeight(JsonObject& object, std::string_view key, std::optional<double>& into) {
    if (const auto mm = object.lengthMm(key, kMm)) into = mm;
}

// {"bust": 0, ...}: the levels named, each once.
std::optional<std::map<LevelId, double>> levelLengths(JsonObject& top, std::string_view key) {
    auto object = top.object(key);
    if (!object) return std::nullopt;
    std::map<LevelId, double> lengths;
    for (const LevelId level : kAllLevels) {
        if (const auto mm = object->lengthMm(keyOf(level), kMm)) lengths[level] = *mm;
    }
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
    return lengths;
}

// {"2-3": 12, ...}: any names; whether a seam of that name exists is the block's business.
std::optional<std::map<std::string, double>> namedLengths(JsonObject& top, std::string_view key) {
    auto object = top.object(key);
    if (!object) return std::nullopt;
    std::map<std::string, double> lengths;
    for (const std::string& name : object->names()) {
        if (const auto mm = object->lengthMm(name, kMm)) lengths[name] = *mm;
    }
    return lengths;
}

std::optional<std::map<std::string, double>> namedNumbers(JsonObject& top, std::string_view key) {
    auto object = top.object(key);
    if (!object) return std::nullopt;
    std::map<std::string, double> numbers;
    for (const std::string& name : object->names()) {
        if (const auto number = object->number(name)) numbers[name] = *number;
    }
    return numbers;
}

void readTopEdge(JsonObject& top, TopEdgeStyle& edge) {
    auto object = top.object("top_edge");
    if (!object) return;
    take(object->choice("shape", text_formats::topShapeNames()), edge.shape);
    takeHeight(*object, "front", edge.frontMm);
    takeHeight(*object, "bust_seam", edge.bustSeamMm);
    takeHeight(*object, "side", edge.sideMm);
    takeHeight(*object, "back", edge.backMm);
    take(namedLengths(*object, "at_seam"), edge.atSeamMm);
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
}

void readBottomEdge(JsonObject& top, BottomEdgeStyle& edge) {
    auto object = top.object("bottom_edge");
    if (!object) return;
    take(object->choice("shape", text_formats::bottomShapeNames()), edge.shape);
    takeHeight(*object, "front", edge.frontMm);
    takeHeight(*object, "side", edge.sideMm);
    takeHeight(*object, "back", edge.backMm);
    take(namedLengths(*object, "at_seam"), edge.atSeamMm);
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
}

void readShares(JsonObject& top, Style& style) {
    take(top.number("front_share"), style.frontShare);
    take(top.numbers("panel_shares"), style.panelShares);
    take(namedNumbers(top, "front_part"), style.frontPart);
    auto object = top.object("seam_shares");
    if (!object) return;
    for (const LevelId level : kAllLevels) {
        if (auto shares = object->numbers(keyOf(level))) style.seamShares[level] = *shares;
    }
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
}

void readOwnLevels(JsonObject& top, Style& style) {
    for (JsonObject& object : top.objects("own_levels")) {
        OwnLevel level;
        level.name = object.text("name").value_or("");
        level.heightMm = object.lengthMm("height", kMm).value_or(0);
        if (level.name.empty() && object.member("name") == nullptr) {
            object.report(ProblemCode::jsonKeyMissing, "name", "");
        }
        if (object.member("height") == nullptr) {
            object.report(ProblemCode::jsonKeyMissing, "height", "");
        }
        object.refuseUnknown(ProblemCode::jsonUnknownKey);
        style.ownLevels.push_back(std::move(level));
    }
}

// A single length goes to every seam; an object says each kind of edge by itself.
void readAllowance(JsonObject& top, AllowanceStyle& allowance) {
    const nlohmann::json* value = top.member("allowance");
    if (value == nullptr) return;
    if (!value->is_object()) {
        take(top.lengthMm("allowance", kMm), allowance.seamMm);
        return;
    }
    auto object = top.object("allowance");
    take(object->lengthMm("seam", kMm), allowance.seamMm);
    take(object->lengthMm("opening", kMm), allowance.openingMm);
    take(object->lengthMm("edge", kMm), allowance.edgeMm);
    take(object->truth("top_bound"), allowance.isTopBound);
    take(object->truth("bottom_bound"), allowance.isBottomBound);
    take(namedLengths(*object, "by_edge"), allowance.byEdgeMm);
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
}

}  // namespace

Style text_formats::readStyle(JsonObject& top) {
    Style style;
    take(top.choice("block", text_formats::blockNames()), style.block);
    take(top.wholeNumber("panels_per_half"), style.panelsPerHalf);
    take(top.lengthMm("lacing_gap", kMm), style.lacingGapMm);
    take(levelLengths(top, "lacing_gap_at"), style.lacingGapAtMm);
    take(levelLengths(top, "ease"), style.easeMm);
    take(top.choice("front", text_formats::frontNames()), style.front);
    readTopEdge(top, style.topEdge);
    readBottomEdge(top, style.bottomEdge);
    readShares(top, style);
    readOwnLevels(top, style);
    readAllowance(top, style.allowance);
    top.refuseUnknown(ProblemCode::jsonUnknownKey);
    return style;
}

Outcome<Style> readStyleJson(std::string_view text) {
    const auto json = text_formats::parsedKind(text, "style");
    if (!json) return Outcome<Style>::failed(json.problems);
    std::vector<Problem> problems;
    JsonObject top(*json, {}, problems);
    text_formats::passKind(top);
    Style style = text_formats::readStyle(top);
    if (!problems.empty()) return Outcome<Style>::failed(std::move(problems));
    return style;
}

}  // namespace coutil
