#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// The number in SQLite's application_id of every folio ("Cout") and the schema this program writes.
inline constexpr int kFolioApplicationId = 0x436F7574;
inline constexpr int kFolioSchemaVersion = 3;

// A photo longer than this is refused.
inline constexpr std::size_t kLargestPhotoBytes = std::size_t{12} << 20;

// Reads a folio; the file is never changed. Problems (one, clear): fileMissing, fileUnreadable,
// fileForeign (not a folio), fileNewer (figures: "file", "program"), fileDamaged. Every revision is
// read against its digest; where one is not what was confirmed the problems are, one for each,
// revisionTampered or revisionParentMissing (subject: its number, detail: its garment).
[[nodiscard]] Outcome<Folio> readFolio(const std::filesystem::path& file);

// Writes a folio as a whole: beside the target, read back and compared, synced, then renamed over
// it. Killed at any moment, the target holds the old or the new state. Problems: fileUnwritable,
// diskFull, photoTooLarge (subject: its caption or id; figures "bytes", "limit"); then nothing was
// changed. A folio that would take a confirmed revision away from the file that stands there is
// refused: fileUnwritable (detail: its garment, figure "revision": its number).
[[nodiscard]] std::optional<Problem> writeFolio(const Folio& folio,
                                                const std::filesystem::path& file);

}  // namespace coutil
