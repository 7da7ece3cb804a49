#pragma once

#include <optional>

#include "core/revision/folio.h"

namespace SQLite {
class Database;
}

namespace coutil {

// Puts a folio into the tables in place of what was there, with its seal. The caller holds the
// transaction. Throws SQLite::Exception.
void putFolioRows(SQLite::Database& database, const Folio& folio);

// The folio in the tables; nothing where a value can't be what this program wrote (the file is
// damaged). Throws SQLite::Exception.
[[nodiscard]] std::optional<Folio> folioFromRows(SQLite::Database& database);

}  // namespace coutil
