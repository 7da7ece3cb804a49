#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"
#include "core/store/text_formats/json_object.h"

// Alterations and marks as entries of a file.
namespace coutil::text_formats {

using NewId = std::function<std::string()>;

// The entries of the list `key`; an entry without an id gets one from `newId`. What is wrong joins
// the problems of the object.
[[nodiscard]] std::vector<Alteration> readAlterations(JsonObject& top, std::string_view key,
                                                      const NewId& newId);
[[nodiscard]] std::vector<Mark> readMarks(JsonObject& top, std::string_view key,
                                          const NewId& newId);

[[nodiscard]] nlohmann::ordered_json alterationsJson(const std::vector<Alteration>& alterations);
[[nodiscard]] nlohmann::ordered_json marksJson(const std::vector<Mark>& marks);

// What both have: a length within a metre either way (lengthOutOfRange), one that must be there
// (jsonKeyMissing), a name that must be there and not empty, a choice that must be there.
[[nodiscard]] std::optional<double> drawnMm(JsonObject& object, std::string_view key);
[[nodiscard]] double neededMm(JsonObject& object, std::string_view key);
[[nodiscard]] std::string neededName(JsonObject& object, std::string_view key);
[[nodiscard]] EdgeLine neededLine(JsonObject& object, std::string_view key);
// Reports a key that is not there; false then.
bool isThere(JsonObject& object, std::string_view key);
[[nodiscard]] BodySide readSide(JsonObject& object);
// "seam", or "panel" with "along"; "level" or "height".
[[nodiscard]] LinePlace readLinePlace(JsonObject& object);
[[nodiscard]] HeightPlace readHeightPlace(JsonObject& object);
void putLinePlace(nlohmann::ordered_json& json, const LinePlace& place);
void putHeightPlace(nlohmann::ordered_json& json, const HeightPlace& place);

}  // namespace coutil::text_formats
