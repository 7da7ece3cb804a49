#include <nlohmann/json.hpp>

#include "core/store/text_formats/fit_json.h"

namespace coutil::text_formats {

using nlohmann::ordered_json;

namespace {

struct PutPlace {
    ordered_json& json;

    void operator()(const std::monostate& /*nowhere*/) const {}
    void operator()(const SeamPlace& place) const {
        json["seam"] = place.seam;
        json["position"] = place.positionMm;
    }
    void operator()(const TuckPlace& place) const {
        json["panel"] = place.panel;
        json["height"] = place.heightMm;
    }
    void operator()(const SlitPlace& place) const {
        json["panel"] = place.panel;
        json["from"] = keyOf(place.from);
        json["along"] = place.alongMm;
        json["length"] = place.lengthMm;
    }
    void operator()(const OnLinePlace& place) const {
        json["line"] = keyOf(place.line);
        putLinePlace(json, place.at);
    }
    void operator()(const HeightPlace& place) const { putHeightPlace(json, place); }
};

}  // namespace

ordered_json marksJson(const std::vector<Mark>& marks) {
    ordered_json list = ordered_json::array();
    for (const Mark& mark : marks) {
        ordered_json json;
        if (!mark.id.empty()) json["id"] = mark.id;
        json["kind"] = keyOf(mark.kind);
        std::visit(PutPlace{json}, mark.place);
        json["amount"] = mark.amountMm;
        json["side"] = keyOf(mark.side);
        if (!mark.readBy.empty()) json["by"] = mark.readBy;
        if (!mark.note.empty()) json["note"] = mark.note;
        if (mark.spot) {
            json["photo"] = {{"id", mark.spot->photo}, {"x", mark.spot->x}, {"y", mark.spot->y}};
        }
        if (!mark.isOn) json["on"] = false;
        list.push_back(std::move(json));
    }
    return list;
}

}  // namespace coutil::text_formats
