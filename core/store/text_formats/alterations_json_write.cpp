#include <nlohmann/json.hpp>

#include "core/store/text_formats/fit_json.h"
#include "core/store/text_formats/style_json.h"

namespace coutil::text_formats {

using nlohmann::ordered_json;

void putLinePlace(ordered_json& json, const LinePlace& place) {
    if (!place.seam.empty()) {
        json["seam"] = place.seam;
        return;
    }
    json["panel"] = place.panel;
    json["along"] = place.alongMm;
}

void putHeightPlace(ordered_json& json, const HeightPlace& place) {
    if (place.level.empty()) {
        json["height"] = place.heightMm;
    } else {
        json["level"] = place.level;
    }
}

namespace {

ordered_json fadeJson(const Fade& fade) {
    return fade.overMm ? ordered_json(*fade.overMm) : ordered_json("edge");
}

void putFades(ordered_json& json, const Fade& first, const char* firstKey, const Fade& second,
              const char* secondKey) {
    if (first == second) {
        json["fade"] = fadeJson(first);
        return;
    }
    json[firstKey] = fadeJson(first);
    json[secondKey] = fadeJson(second);
}

ordered_json edgePlaceJson(const EdgePlace& place) {
    return {{"edge", place.edge}, {"along", place.alongMm}};
}

ordered_json byJson(const Vector& by) { return ordered_json::array({by.x(), by.y()}); }

// Puts what belongs to a kind beside what all have.
struct PutChange {
    ordered_json& json;

    void operator()(const ShapeSeam& change) const {
        json["seam"] = change.seam;
        json["amounts"] = ordered_json::array();
        for (const AmountAt& amount : change.amounts) {
            json["amounts"].push_back(ordered_json::array({amount.positionMm, amount.amountMm}));
        }
        putFades(json, change.up, "fade_up", change.down, "fade_down");
        json["split"] = change.frontPart;
    }
    void operator()(const OpenPanel& change) const {
        json["panel"] = change.panel;
        json["mouth"] = edgePlaceJson(change.mouth);
        if (change.hinge) json["hinge"] = edgePlaceJson(*change.hinge);
        if (change.slitLengthMm) json["slit_length"] = *change.slitLengthMm;
        json["amount"] = change.amountMm;
    }
    void operator()(const ChangeLength& change) const {
        putHeightPlace(json, change.at);
        json["amount"] = change.amountMm;
        if (change.taper) {
            json["taper"] = {{"from", change.taper->from}, {"to", change.taper->to}};
        }
    }
    void operator()(const ReshapeEdge& change) const {
        json["line"] = keyOf(change.line);
        json["amounts"] = ordered_json::array();
        for (const LineAmount& amount : change.amounts) {
            ordered_json entry;
            putLinePlace(entry, amount.place);
            entry["amount"] = amount.amountMm;
            json["amounts"].push_back(std::move(entry));
        }
        putFades(json, change.towardsFront, "fade_front", change.towardsBack, "fade_back");
    }
    void operator()(const MoveLevel& change) const {
        json["level"] = change.level;
        json["up"] = change.upMm;
        if (change.widerMm != 0) json["wider"] = change.widerMm;
    }
    void operator()(const MoveCorner& change) const {
        json["panel"] = change.panel;
        json["edge"] = change.edge;
        json["end"] = keyOf(change.end);
        json["by"] = byJson(change.byMm);
    }
    void operator()(const MoveHandle& change) const {
        json["panel"] = change.panel;
        json["edge"] = change.edge;
        json["piece"] = change.piece;
        json["handle"] = change.handle;
        json["by"] = byJson(change.byMm);
    }
    void operator()(const SplitPanel& change) const {
        json["panel"] = change.panel;
        json["bottom"] = change.bottomAlongMm;
        json["top"] = change.topAlongMm;
    }
    void operator()(const JoinPanels& change) const { json["seam"] = change.seam; }
    void operator()(const MakeSymmetric& change) const { json["from"] = keyOf(change.from); }
    void operator()(const ChangeStyle& change) const { json["style"] = styleJson(change.style); }
    void operator()(const TakeMeasurements& change) const {
        json["measurement_set"] = change.measurementSet;
    }
};

}  // namespace

ordered_json alterationsJson(const std::vector<Alteration>& alterations) {
    ordered_json list = ordered_json::array();
    for (const Alteration& alteration : alterations) {
        ordered_json json;
        if (!alteration.id.empty()) json["id"] = alteration.id;
        json["kind"] = kindOf(alteration.change);
        json["side"] = keyOf(alteration.side);
        std::visit(PutChange{json}, alteration.change);
        if (!alteration.why.empty()) json["why"] = alteration.why;
        if (!alteration.marks.empty()) json["marks"] = alteration.marks;
        if (!alteration.isOn) json["on"] = false;
        list.push_back(std::move(json));
    }
    return list;
}

}  // namespace coutil::text_formats
