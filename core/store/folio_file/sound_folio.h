#pragma once

#include <filesystem>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace SQLite {
class Database;
}

namespace coutil {

// The folio in a database that SQLite itself found whole, brought to today's schema and checked in
// all other respects: tables and guards, revisions, seal. Problems as readFolio, with `file` as
// subject. Throws SQLite::Exception.
[[nodiscard]] Outcome<Folio> soundFolio(SQLite::Database& database,
                                        const std::filesystem::path& file);

}  // namespace coutil
