#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string_view>

#include "core/problems/problem.h"

namespace coutil {

inline constexpr std::size_t kFolioHeaderBytes = 100;

// Whether a file that begins with these bytes is a folio, sound or not.
[[nodiscard]] bool hasFolioMark(std::string_view bytes);

// What the first hundred bytes say, before any of it reaches the database: fileForeign, fileNewer
// or fileDamaged, or nothing when they are a folio's that this program can read. The layout is
// SQLite's: https://www.sqlite.org/fileformat2.html, "The Database Header".
[[nodiscard]] std::optional<Problem> checkFolioHeader(std::string_view bytes,
                                                      const std::filesystem::path& file);

}  // namespace coutil
