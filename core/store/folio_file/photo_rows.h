#pragma once

#include <optional>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace SQLite {
class Database;
}

namespace coutil {

// photoTooLarge for the first photo over kLargestPhotoBytes (subject: its caption or id).
[[nodiscard]] std::optional<Problem> photoTooLargeIn(const Folio& folio);

// Photos in their order; bytes that are in the table already are not written again, those of photos
// the folio has no more are taken away. Throws SQLite::Exception.
void putPhotoRows(SQLite::Database& database, const Folio& folio);

// False where bytes are missing or not what was stored. Throws SQLite::Exception.
[[nodiscard]] bool takePhotos(SQLite::Database& database, Folio& folio);

}  // namespace coutil
