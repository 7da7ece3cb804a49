#pragma once

#include <filesystem>
#include <optional>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// The number in SQLite's application_id of every folio ("Cout") and the schema this program writes.
inline constexpr int kFolioApplicationId = 0x436F7574;
inline constexpr int kFolioSchemaVersion = 1;

// Reads a folio; the file is never changed. Problems (one, clear): fileMissing, fileUnreadable,
// fileForeign (not a folio), fileNewer (figures: "file", "program"), fileDamaged.
[[nodiscard]] Outcome<Folio> readFolio(const std::filesystem::path& file);

// Writes a folio as a whole: beside the target, read back and compared, synced, then renamed over
// it. Killed at any moment, the target holds the old or the new state. Problems: fileUnwritable,
// diskFull; then nothing was changed.
[[nodiscard]] std::optional<Problem> writeFolio(const Folio& folio,
                                                const std::filesystem::path& file);

}  // namespace coutil
