#pragma once

#include <filesystem>
#include <optional>
#include <string_view>

#include "core/problems/problem.h"

namespace coutil {

// Writes a drawing, report or PDF as writeWholeFile() does, but never over a folio, by whatever
// name or link it is reached: a typing slip must not cost a client's file. Problems as there; over
// a folio fileUnwritable with the figure "folio_bytes", and nothing was changed.
[[nodiscard]] std::optional<Problem> writeExport(const std::filesystem::path& file,
                                                 std::string_view bytes);

}  // namespace coutil
