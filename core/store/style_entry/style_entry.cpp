#include "core/store/style_entry.h"

#include <string>

#include <nlohmann/json.hpp>

#include "core/store/text_formats.h"
#include "core/store/text_formats/json_object.h"

namespace coutil {
namespace {

using Json = nlohmann::json;

// A bare word is a text. What has brackets is read as JSON, and so are numbers and truths.
Json valueFrom(std::string_view text) {
    const Outcome<Json> read = text_formats::parsedJson(text);
    return read ? *read : Json(std::string(text));
}

// The place of a name in the style; an object on the way that is not there yet is made. Nothing
// when the way leads through a number or a text.
Json* placeOf(Json& style, std::string_view name) {
    Json* place = &style;
    for (;;) {
        const std::size_t dot = name.find('.');
        const std::string step(name.substr(0, dot));
        if (!place->is_object() && !place->is_null()) return nullptr;
        place = &(*place)[step];
        if (dot == std::string_view::npos) return place;
        name.remove_prefix(dot + 1);
    }
}

}  // namespace

Outcome<Style> styleWithEntry(const Style& style, std::string_view name, std::string_view value) {
    // In a file one length for all seams may stand for the object; here it must not wipe out the
    // rest of it.
    if (name == "allowance") name = "allowance.seam";
    Json json = Json::parse(writeStyleJson(style));
    Json* place = placeOf(json, name);
    if (place == nullptr) {
        Problem problem;
        problem.code = ProblemCode::styleUnknownKey;
        problem.subject = std::string(name);
        return problem;
    }
    *place = valueFrom(value);
    return readStyleJson(json.dump(-1, ' ', false, Json::error_handler_t::replace));
}

}  // namespace coutil
