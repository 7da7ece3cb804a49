#pragma once

#include <span>
#include <string_view>

namespace SQLite {
class Database;
}

namespace coutil {

// One table of a folio.
struct FolioTable {
    std::string_view name;
    std::string_view create;
};

// The tables of schema kFolioSchemaVersion.
[[nodiscard]] std::span<const FolioTable> folioTables();

// Marks a new, empty database as a folio and makes its tables. Throws SQLite::Exception.
void createFolioTables(SQLite::Database& database);

// True when every table is there as a plain table (no view, no virtual table in its place).
[[nodiscard]] bool hasFolioTables(SQLite::Database& database);

}  // namespace coutil
