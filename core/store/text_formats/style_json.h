#pragma once

#include <nlohmann/json_fwd.hpp>

#include "core/block/style.h"
#include "core/store/text_formats/json_object.h"

// A style as one entry of a file: also inside other entries.
namespace coutil::text_formats {

// Asks for every member of a style and refuses all others; what is wrong joins the problems.
[[nodiscard]] Style readStyle(JsonObject& object);
[[nodiscard]] nlohmann::ordered_json styleJson(const Style& style);

}  // namespace coutil::text_formats
