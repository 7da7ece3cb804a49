#pragma once

#include <span>
#include <string_view>

namespace SQLite {
class Database;
}

namespace coutil {

// One table of a folio. Most are written anew with every change; revisions are only ever added, and
// the bytes of photos stay as long as the photo is the same.
struct FolioTable {
    enum class Kept { untilTheNextChange, whileTheSame, forEver };

    std::string_view name;
    std::string_view create;
    Kept kept = Kept::untilTheNextChange;
};

// A guard of the table `revision`.
struct FolioTrigger {
    std::string_view name;
    std::string_view create;
};

// The tables of schema kFolioSchemaVersion.
[[nodiscard]] std::span<const FolioTable> folioTables();
[[nodiscard]] std::span<const FolioTrigger> folioTriggers();

// Marks a new, empty database as a folio and makes its tables and guards. Throws SQLite::Exception.
void createFolioTables(SQLite::Database& database);

// True when every table is there as a plain table (no view, no virtual table in its place), and
// every guard word for word.
[[nodiscard]] bool hasFolioTables(SQLite::Database& database);

}  // namespace coutil
