#pragma once

#include <optional>

#include "core/revision/folio.h"
#include "core/store/folio_file/revision_rows.h"

namespace SQLite {
class Database;
}

namespace coutil {

// Puts a folio into the tables in place of what was there, with its seal. Revisions are only ever
// added: a folio without one that is in the tables is refused. The caller holds the transaction.
// Throws SQLite::Exception.
void putFolioRows(SQLite::Database& database, const Folio& folio);

// The folio in the tables, with the revisions read before; nothing where a value can't be what this
// program wrote (the file is damaged). Throws SQLite::Exception.
[[nodiscard]] std::optional<Folio> folioFromRows(SQLite::Database& database,
                                                 RevisionsByGarment revisions);

}  // namespace coutil
