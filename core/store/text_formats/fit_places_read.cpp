#include <cmath>

#include "core/store/text_formats/fit_json.h"

namespace coutil::text_formats {
namespace {

constexpr auto kMm = LengthUnit::millimetre;
// Nothing on a bodice is a metre long or away.
constexpr double kFarthestMm = 1000;

}  // namespace

std::optional<double> drawnMm(JsonObject& object, std::string_view key) {
    const auto mm = object.lengthMm(key, kMm);
    if (!mm || std::abs(*mm) <= kFarthestMm) return mm;
    object.report(ProblemCode::lengthOutOfRange, key, object.asWritten(key));
    return std::nullopt;
}

bool isThere(JsonObject& object, std::string_view key) {
    if (object.has(key)) return true;
    object.report(ProblemCode::jsonKeyMissing, key, "");
    return false;
}

double neededMm(JsonObject& object, std::string_view key) {
    return isThere(object, key) ? drawnMm(object, key).value_or(0) : 0;
}

std::string neededName(JsonObject& object, std::string_view key) {
    if (!isThere(object, key)) return {};
    const auto name = object.text(key);
    if (name && name->empty()) object.report(ProblemCode::jsonBadValue, key, "");
    return name.value_or("");
}

EdgeLine neededLine(JsonObject& object, std::string_view key) {
    if (!isThere(object, key)) return EdgeLine::top;
    return object.choice<EdgeLine>(key, {{"top", EdgeLine::top}, {"bottom", EdgeLine::bottom}})
        .value_or(EdgeLine::top);
}

BodySide readSide(JsonObject& object) {
    return object
        .choice<BodySide>(
            "side",
            {{"both", BodySide::both}, {"left", BodySide::left}, {"right", BodySide::right}})
        .value_or(BodySide::both);
}

LinePlace readLinePlace(JsonObject& object) {
    if (!object.has("panel")) return {.seam = neededName(object, "seam")};
    LinePlace place;
    place.panel = neededName(object, "panel");
    place.alongMm = neededMm(object, "along");
    return place;
}

HeightPlace readHeightPlace(JsonObject& object) {
    if (!object.has("level")) return {.heightMm = neededMm(object, "height")};
    return {.level = neededName(object, "level")};
}

}  // namespace coutil::text_formats
