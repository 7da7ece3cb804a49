#pragma once

#include <string>

namespace SQLite {
class Database;
}

namespace coutil {

// The digest of every value in all tables, whatever the schema (the seal's own table and the
// working copy's notes excepted; of revisions and photos their own digests). SQLite's own check
// sees broken pages, but not a letter or a figure that changed inside one; the seal does. Throws
// SQLite::Exception.
[[nodiscard]] std::string contentSeal(SQLite::Database& database);

// Writes the seal of what is in the tables now, and tells whether it fits.
void putSeal(SQLite::Database& database);
[[nodiscard]] bool isSealSound(SQLite::Database& database);

}  // namespace coutil
