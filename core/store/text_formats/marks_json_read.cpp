#include <map>
#include <utility>

#include "core/store/text_formats/fit_json.h"

namespace coutil::text_formats {
namespace {

// What a kind of mark needs beside its name.
enum class Wants { acrossPlace, linePlace, heightPlace, amount, nothing };

const std::map<std::string, std::pair<MarkKind, Wants>>& markKinds() {
    static const std::map<std::string, std::pair<MarkKind, Wants>> kinds{
        {"pinned", {MarkKind::pinned, Wants::acrossPlace}},
        {"opened", {MarkKind::opened, Wants::acrossPlace}},
        {"raise", {MarkKind::raise, Wants::linePlace}},
        {"lower", {MarkKind::lower, Wants::linePlace}},
        {"longer", {MarkKind::longer, Wants::heightPlace}},
        {"shorter", {MarkKind::shorter, Wants::heightPlace}},
        {"bust_point_higher", {MarkKind::bustPointHigher, Wants::amount}},
        {"bust_point_lower", {MarkKind::bustPointLower, Wants::amount}},
        {"bust_point_wider", {MarkKind::bustPointWider, Wants::amount}},
        {"gapes", {MarkKind::gapes, Wants::nothing}},
        {"cuts_in", {MarkKind::cutsIn, Wants::nothing}},
        {"bone_pokes", {MarkKind::bonePokes, Wants::nothing}}};
    return kinds;
}

MarkPlace readSlit(JsonObject& object) {
    SlitPlace place;
    place.panel = neededName(object, "panel");
    place.from = neededLine(object, "from");
    place.alongMm = neededMm(object, "along");
    place.lengthMm = neededMm(object, "length");
    if (place.lengthMm < 0) {
        object.report(ProblemCode::lengthNegative, "length", object.asWritten("length"));
    }
    return place;
}

// The keys tell what sort of place it is.
MarkPlace readPlace(JsonObject& object) {
    if (object.has("line")) {
        const EdgeLine line = neededLine(object, "line");
        return OnLinePlace{line, readLinePlace(object)};
    }
    if (object.has("seam")) {
        SeamPlace place;
        place.seam = neededName(object, "seam");
        place.positionMm = neededMm(object, "position");
        return place;
    }
    if (object.has("from")) return readSlit(object);
    if (object.has("panel")) {
        TuckPlace place;
        place.panel = neededName(object, "panel");
        place.heightMm = neededMm(object, "height");
        return place;
    }
    if (object.has("level") || object.has("height")) return readHeightPlace(object);
    return {};
}

bool isAcross(const MarkPlace& place) {
    return std::holds_alternative<SeamPlace>(place) || std::holds_alternative<TuckPlace>(place) ||
           std::holds_alternative<SlitPlace>(place);
}

void checkPlace(JsonObject& object, const MarkPlace& place, Wants wants) {
    const auto missing = [&object](std::string_view key) {
        object.report(ProblemCode::jsonKeyMissing, key, "");
    };
    if (wants == Wants::acrossPlace && !isAcross(place)) missing("seam");
    if (wants == Wants::linePlace && !std::holds_alternative<OnLinePlace>(place)) missing("line");
    if (wants == Wants::heightPlace && !std::holds_alternative<HeightPlace>(place)) {
        missing("level");
    }
}

std::optional<PhotoSpot> readSpot(JsonObject& mark) {
    auto object = mark.object("photo");
    if (!object) return std::nullopt;
    PhotoSpot spot;
    spot.photo = neededName(*object, "id");
    for (const auto& [key, share] : {std::pair{"x", &spot.x}, std::pair{"y", &spot.y}}) {
        if (!isThere(*object, key)) continue;
        *share = object->number(key).value_or(0);
        if (*share >= 0 && *share <= 1) continue;
        object->report(ProblemCode::jsonBadValue, key, object->asWritten(key));
    }
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
    return spot;
}

double readAmount(JsonObject& object, Wants wants) {
    const double amountMm = wants == Wants::nothing ? drawnMm(object, "amount").value_or(0)
                                                    : neededMm(object, "amount");
    if (amountMm < 0) {
        object.report(ProblemCode::lengthNegative, "amount", object.asWritten("amount"));
    }
    return amountMm;
}

std::optional<Mark> readMark(JsonObject& object, const NewId& newId) {
    if (!isThere(object, "kind")) return std::nullopt;
    const auto kind = object.choice("kind", markKinds());
    if (!kind) return std::nullopt;
    Mark mark;
    mark.id = object.has("id") ? neededName(object, "id") : newId();
    mark.kind = kind->first;
    mark.place = readPlace(object);
    checkPlace(object, mark.place, kind->second);
    mark.amountMm = readAmount(object, kind->second);
    mark.side = readSide(object);
    mark.readBy = object.text("by").value_or("");
    mark.note = object.text("note").value_or("");
    mark.spot = readSpot(object);
    mark.isOn = object.truth("on").value_or(true);
    object.refuseUnknown(ProblemCode::jsonUnknownKey);
    return mark;
}

}  // namespace

std::vector<Mark> readMarks(JsonObject& top, std::string_view key, const NewId& newId) {
    std::vector<Mark> marks;
    if (!isThere(top, key)) return marks;
    for (JsonObject& object : top.objects(key)) {
        if (auto mark = readMark(object, newId)) marks.push_back(std::move(*mark));
    }
    return marks;
}

}  // namespace coutil::text_formats
