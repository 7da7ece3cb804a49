#include "core/store/text_formats/outline_json.h"

#include <nlohmann/json.hpp>

namespace coutil::text_formats {

using nlohmann::ordered_json;

ordered_json numberJson(double value) { return value == 0 ? 0.0 : value; }

ordered_json pointJson(const Point& point) {
    return ordered_json::array({numberJson(point.x()), numberJson(point.y())});
}

ordered_json pathJson(const Path& path) {
    ordered_json pieces = ordered_json::array();
    for (const Cubic& piece : path.pieces) {
        ordered_json numbers = ordered_json::array();
        for (const Point& point : {piece.p0, piece.p1, piece.p2, piece.p3}) {
            numbers.push_back(numberJson(point.x()));
            numbers.push_back(numberJson(point.y()));
        }
        pieces.push_back(std::move(numbers));
    }
    return pieces;
}

ordered_json edgeJson(const Edge& edge) {
    ordered_json json;
    json["name"] = edge.name;
    json["role"] = keyOf(edge.role);
    json["path"] = pathJson(edge.path);
    return json;
}

ordered_json levelLinesJson(const std::vector<LevelLine>& levels) {
    ordered_json json = ordered_json::object();
    for (const LevelLine& line : levels) {
        json[line.level] = ordered_json::array({pointJson(line.front), pointJson(line.back)});
    }
    return json;
}

ordered_json estimateJson(const Estimate& estimate) {
    ordered_json json;
    json["name"] = keyOf(estimate.id);
    json["value"] = numberJson(estimate.valueMm);
    json["sd"] = numberJson(estimate.sdMm);
    json["from"] = ordered_json::array();
    for (const Measurement from : estimate.from) json["from"].push_back(keyOf(from));
    json["source"] = estimate.source;
    return json;
}

std::string nameOf(PanelSide side) {
    switch (side) {
        case PanelSide::both:
            return "both";
        case PanelSide::left:
            return "left";
        case PanelSide::right:
            return "right";
    }
    return {};
}

std::string dumped(const ordered_json& json) {
    return json.dump(-1, ' ', false, nlohmann::detail::error_handler_t::replace);
}

}  // namespace coutil::text_formats
