#include "core/store/folio_file/folio_schema.h"

#include <array>
#include <string>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/folio_file.h"

namespace coutil {
namespace {

// Schema 1. What is released is never edited: a change is a new schema and a step in
// folio_upgrade.cpp. `place` keeps the order of lists. Ids are UUIDs, so that the records of two
// machines can be united.
constexpr std::array kTables{
    FolioTable{"folio",
               "CREATE TABLE folio (one INTEGER PRIMARY KEY CHECK (one = 1), id TEXT NOT NULL, "
               "client TEXT NOT NULL, note TEXT NOT NULL, unit TEXT NOT NULL) STRICT"},
    FolioTable{"measurement_set",
               "CREATE TABLE measurement_set (id TEXT PRIMARY KEY, place INTEGER NOT NULL UNIQUE, "
               "taken_on TEXT NOT NULL, taken_by TEXT NOT NULL, note TEXT NOT NULL, "
               "unit TEXT NOT NULL) STRICT, WITHOUT ROWID"},
    FolioTable{"reading",
               "CREATE TABLE reading (measurement_set TEXT NOT NULL, name TEXT NOT NULL, "
               "value_mm REAL, as_written TEXT, PRIMARY KEY (measurement_set, name)) "
               "STRICT, WITHOUT ROWID"},
    FolioTable{"garment",
               "CREATE TABLE garment (id TEXT PRIMARY KEY, place INTEGER NOT NULL UNIQUE, "
               "name TEXT NOT NULL, created_on TEXT NOT NULL) STRICT, WITHOUT ROWID"},
    FolioTable{"pencil",
               "CREATE TABLE pencil (garment TEXT PRIMARY KEY, id TEXT NOT NULL, "
               "started_on TEXT NOT NULL, measurement_set TEXT NOT NULL, style TEXT NOT NULL) "
               "STRICT, WITHOUT ROWID"},
};

constexpr std::string_view kSealTable =
    "CREATE TABLE seal (one INTEGER PRIMARY KEY CHECK (one = 1), digest TEXT NOT NULL) STRICT";

bool hasTable(SQLite::Database& database, std::string_view name) {
    SQLite::Statement find(database,
                           "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = ? "
                           "AND rootpage > 0");
    find.bind(1, std::string(name));
    return find.executeStep() && find.getColumn(0).getInt() == 1;
}

}  // namespace

std::span<const FolioTable> folioTables() { return kTables; }

void createFolioTables(SQLite::Database& database) {
    database.exec("PRAGMA application_id = " + std::to_string(kFolioApplicationId));
    database.exec("PRAGMA user_version = " + std::to_string(kFolioSchemaVersion));
    for (const FolioTable& table : kTables) database.exec(std::string(table.create));
    database.exec(std::string(kSealTable));
}

bool hasFolioTables(SQLite::Database& database) {
    for (const FolioTable& table : kTables)
        if (!hasTable(database, table.name)) return false;
    return hasTable(database, "seal");
}

}  // namespace coutil
