#pragma once

#include <string_view>

#include "core/block/style.h"
#include "core/problems/problem.h"

namespace coutil {

// The style with one entry set, named as in its file with dots between the steps ("ease.waist",
// "top_edge.shape"). The value is written as in the file; quotation marks around a text may be left
// out ("straight"). Problems as readStyleJson; styleUnknownKey also for a path through something
// that has no entries.
[[nodiscard]] Outcome<Style> styleWithEntry(const Style& style, std::string_view name,
                                            std::string_view value);

}  // namespace coutil
