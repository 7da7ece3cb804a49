#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/pattern/pattern.h"
#include "core/problems/problem.h"
#include "core/store/text_formats.h"

// What pattern, tracings and reports show the same way.
namespace coutil::text_formats {

// Shortest text that reads back as the same number; never "-0".
[[nodiscard]] nlohmann::ordered_json numberJson(double value);
[[nodiscard]] nlohmann::ordered_json pointJson(const Point& point);  // [x, y]
[[nodiscard]] nlohmann::ordered_json pathJson(const Path& path);     // [[x0,y0,...,x3,y3], ...]
[[nodiscard]] nlohmann::ordered_json edgeJson(const Edge& edge);     // name, role, path
[[nodiscard]] nlohmann::ordered_json levelLinesJson(const std::vector<LevelLine>& levels);
[[nodiscard]] nlohmann::ordered_json problemsJson(const std::vector<Problem>& problems,
                                                  const SentenceOf& sentence);
[[nodiscard]] nlohmann::ordered_json estimateJson(const Estimate& estimate);
[[nodiscard]] std::string nameOf(PanelSide side);  // "both", "left", "right"

// One line of text without line ends inside; bytes that are no UTF-8 become U+FFFD.
[[nodiscard]] std::string dumped(const nlohmann::ordered_json& json);

}  // namespace coutil::text_formats
