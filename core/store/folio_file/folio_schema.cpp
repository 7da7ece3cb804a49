#include "core/store/folio_file/folio_schema.h"

#include <array>
#include <string>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/folio_file.h"

namespace coutil {
namespace {

// Schema 3. What is released is never edited: a change is a new schema and a step in
// folio_upgrade.cpp. `place` keeps the order of lists. Ids are UUIDs, so that the records of two
// machines can be united.
//
// A revision is found by its digest and has no row number: with one, INSERT OR REPLACE could give
// an old number to a new row and take the old row's place without any trigger.
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
    FolioTable{"making_up",
               "CREATE TABLE making_up (garment TEXT PRIMARY KEY, choices TEXT NOT NULL, "
               "tracing TEXT NOT NULL) STRICT, WITHOUT ROWID"},
    FolioTable{"pencil",
               "CREATE TABLE pencil (garment TEXT NOT NULL, id TEXT NOT NULL, "
               "place INTEGER NOT NULL, started_on TEXT NOT NULL, measurement_set TEXT NOT NULL, "
               "style TEXT NOT NULL, name TEXT NOT NULL, parent TEXT NOT NULL, "
               "alterations TEXT NOT NULL, PRIMARY KEY (garment, id), UNIQUE (garment, place)) "
               "STRICT, WITHOUT ROWID"},
    FolioTable{"set_aside",
               "CREATE TABLE set_aside (garment TEXT NOT NULL, pencil TEXT NOT NULL, "
               "place INTEGER NOT NULL, code TEXT NOT NULL, subject TEXT NOT NULL, "
               "panel TEXT NOT NULL, reason TEXT NOT NULL, PRIMARY KEY (garment, pencil, place)) "
               "STRICT, WITHOUT ROWID"},
    FolioTable{"revision",
               "CREATE TABLE revision (digest TEXT PRIMARY KEY, garment TEXT NOT NULL, "
               "number INTEGER NOT NULL, parent TEXT NOT NULL, confirmed_on TEXT NOT NULL, "
               "confirmed_by TEXT NOT NULL, note TEXT NOT NULL, errors_accepted TEXT NOT NULL, "
               "recipe TEXT NOT NULL, ink TEXT NOT NULL, UNIQUE (garment, number)) "
               "STRICT, WITHOUT ROWID",
               FolioTable::Kept::forEver},
    FolioTable{"fitting",
               "CREATE TABLE fitting (id TEXT PRIMARY KEY, garment TEXT NOT NULL, "
               "place INTEGER NOT NULL, held_on TEXT NOT NULL, how TEXT NOT NULL, "
               "read_by TEXT NOT NULL, revision TEXT NOT NULL, pencil TEXT NOT NULL, "
               "note TEXT NOT NULL, marks TEXT NOT NULL, UNIQUE (garment, place)) "
               "STRICT, WITHOUT ROWID"},
    FolioTable{"fitting_photo",
               "CREATE TABLE fitting_photo (fitting TEXT NOT NULL, place INTEGER NOT NULL, "
               "photo TEXT NOT NULL, PRIMARY KEY (fitting, place)) STRICT, WITHOUT ROWID"},
    FolioTable{"photo",
               "CREATE TABLE photo (id TEXT PRIMARY KEY, place INTEGER NOT NULL UNIQUE, "
               "caption TEXT NOT NULL, added_on TEXT NOT NULL, width_px INTEGER NOT NULL, "
               "height_px INTEGER NOT NULL) STRICT, WITHOUT ROWID"},
    FolioTable{"photo_bytes",
               "CREATE TABLE photo_bytes (photo TEXT PRIMARY KEY, digest TEXT NOT NULL, "
               "jpeg BLOB NOT NULL) STRICT",
               FolioTable::Kept::whileTheSame},
};

// What is confirmed is never changed by any program. The third one stands for REPLACE, which takes
// rows away without asking the second.
constexpr std::array kTriggers{
    FolioTrigger{"revision_never_updated",
                 "CREATE TRIGGER revision_never_updated BEFORE UPDATE ON revision BEGIN "
                 "SELECT RAISE(ABORT, 'a confirmed revision never changes'); END"},
    FolioTrigger{"revision_never_deleted",
                 "CREATE TRIGGER revision_never_deleted BEFORE DELETE ON revision BEGIN "
                 "SELECT RAISE(ABORT, 'a confirmed revision is never taken away'); END"},
    FolioTrigger{"revision_never_replaced",
                 "CREATE TRIGGER revision_never_replaced BEFORE INSERT ON revision "
                 "WHEN EXISTS (SELECT 1 FROM revision WHERE digest = NEW.digest "
                 "OR (garment = NEW.garment AND number = NEW.number)) BEGIN "
                 "SELECT RAISE(ABORT, 'a confirmed revision is never replaced'); END"},
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

// Word for word: one that looks like a guard may not be one.
bool hasTrigger(SQLite::Database& database, const FolioTrigger& trigger) {
    SQLite::Statement find(database,
                           "SELECT count(*) FROM sqlite_schema WHERE type = 'trigger' AND name = ? "
                           "AND tbl_name = 'revision' AND sql = ?");
    find.bind(1, std::string(trigger.name));
    find.bind(2, std::string(trigger.create));
    return find.executeStep() && find.getColumn(0).getInt() == 1;
}

}  // namespace

std::span<const FolioTable> folioTables() { return kTables; }
std::span<const FolioTrigger> folioTriggers() { return kTriggers; }

void createFolioTables(SQLite::Database& database) {
    database.exec("PRAGMA application_id = " + std::to_string(kFolioApplicationId));
    database.exec("PRAGMA user_version = " + std::to_string(kFolioSchemaVersion));
    for (const FolioTable& table : kTables) database.exec(std::string(table.create));
    for (const FolioTrigger& trigger : kTriggers) database.exec(std::string(trigger.create));
    database.exec(std::string(kSealTable));
}

bool hasFolioTables(SQLite::Database& database) {
    for (const FolioTable& table : kTables)
        if (!hasTable(database, table.name)) return false;
    for (const FolioTrigger& trigger : kTriggers)
        if (!hasTrigger(database, trigger)) return false;
    return hasTable(database, "seal");
}

}  // namespace coutil
