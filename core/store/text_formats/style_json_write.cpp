#include <nlohmann/json.hpp>

#include "core/store/text_formats.h"
#include "core/store/text_formats/style_json.h"
#include "core/store/text_formats/style_names.h"

namespace coutil {

namespace {

using nlohmann::ordered_json;
using text_formats::nameOf;

template <class Value>
ordered_json byLevel(const std::map<LevelId, Value>& values) {
    ordered_json json = ordered_json::object();
    for (const auto& [level, value] : values) json[std::string(keyOf(level))] = value;
    return json;
}

ordered_json byName(const std::map<std::string, double>& values) {
    ordered_json json = ordered_json::object();
    for (const auto& [name, value] : values) json[name] = value;
    return json;
}

void put(ordered_json& json, const char* key, const std::optional<double>& value) {
    if (value) json[key] = *value;
}

ordered_json topEdgeJson(const TopEdgeStyle& edge) {
    ordered_json json;
    json["shape"] = nameOf(text_formats::topShapeNames(), edge.shape);
    put(json, "front", edge.frontMm);
    put(json, "bust_seam", edge.bustSeamMm);
    put(json, "side", edge.sideMm);
    put(json, "back", edge.backMm);
    if (!edge.atSeamMm.empty()) json["at_seam"] = byName(edge.atSeamMm);
    return json;
}

ordered_json bottomEdgeJson(const BottomEdgeStyle& edge) {
    ordered_json json;
    json["shape"] = nameOf(text_formats::bottomShapeNames(), edge.shape);
    put(json, "front", edge.frontMm);
    put(json, "side", edge.sideMm);
    put(json, "back", edge.backMm);
    if (!edge.atSeamMm.empty()) json["at_seam"] = byName(edge.atSeamMm);
    return json;
}

ordered_json allowanceJson(const AllowanceStyle& allowance) {
    ordered_json json;
    json["seam"] = allowance.seamMm;
    json["opening"] = allowance.openingMm;
    json["edge"] = allowance.edgeMm;
    json["top_bound"] = allowance.isTopBound;
    json["bottom_bound"] = allowance.isBottomBound;
    if (!allowance.byEdgeMm.empty()) json["by_edge"] = byName(allowance.byEdgeMm);
    return json;
}

void putOwnLevels(ordered_json& json, const std::vector<OwnLevel>& levels) {
    if (levels.empty()) return;
    json["own_levels"] = ordered_json::array();
    for (const OwnLevel& level : levels) {
        json["own_levels"].push_back({{"name", level.name}, {"height", level.heightMm}});
    }
}

}  // namespace

ordered_json text_formats::styleJson(const Style& style) {
    ordered_json json;
    json["block"] = nameOf(text_formats::blockNames(), style.block);
    json["panels_per_half"] = style.panelsPerHalf;
    json["lacing_gap"] = style.lacingGapMm;
    if (!style.lacingGapAtMm.empty()) json["lacing_gap_at"] = byLevel(style.lacingGapAtMm);
    json["ease"] = byLevel(style.easeMm);
    json["front"] = nameOf(text_formats::frontNames(), style.front);
    json["top_edge"] = topEdgeJson(style.topEdge);
    json["bottom_edge"] = bottomEdgeJson(style.bottomEdge);
    json["front_share"] = style.frontShare;
    if (!style.panelShares.empty()) json["panel_shares"] = style.panelShares;
    if (!style.seamShares.empty()) json["seam_shares"] = byLevel(style.seamShares);
    if (!style.frontPart.empty()) json["front_part"] = byName(style.frontPart);
    putOwnLevels(json, style.ownLevels);
    json["allowance"] = allowanceJson(style.allowance);
    return json;
}

std::string writeStyleJson(const Style& style) {
    ordered_json json;
    json["coutil"] = "style";
    json["version"] = 1;
    json.update(text_formats::styleJson(style));
    return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + "\n";
}

}  // namespace coutil
