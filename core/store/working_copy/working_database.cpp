#include "core/store/working_copy/working_database.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include "core/store/folio_file/folio_rows.h"
#include "core/store/folio_file/folio_schema.h"
#include "core/store/folio_file/sound_folio.h"

namespace coutil {
namespace {

constexpr int kBusyMs = 2000;  // a second start may be looking at the file just now

void setDurable(SQLite::Database& database) {
    database.exec("PRAGMA journal_mode = WAL");
    database.exec("PRAGMA synchronous = FULL");
}

}  // namespace

SQLite::Database newWorkingDatabase(const std::filesystem::path& file) {
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, kBusyMs);
    setDurable(database);
    SQLite::Transaction all(database);
    createFolioTables(database);
    database.exec(
        "CREATE TABLE working (one INTEGER PRIMARY KEY CHECK (one = 1), original TEXT NOT NULL, "
        "changed_at TEXT NOT NULL) STRICT");
    all.commit();
    return database;
}

SQLite::Database existingWorkingDatabase(const std::filesystem::path& file) {
    // Writable: what a dead holder left in the write-ahead file has to be taken in.
    return SQLite::Database(file.string(), SQLite::OPEN_READWRITE, kBusyMs);
}

void putWorking(SQLite::Database& database, const Folio& folio, const WorkingNotes& notes) {
    SQLite::Transaction all(database);
    putFolioRows(database, folio);
    SQLite::Statement put(database, "INSERT OR REPLACE INTO working VALUES (1, ?, ?)");
    put.bind(1, notes.original.string());
    put.bind(2, notes.changedAt);
    put.exec();
    all.commit();
}

void putOriginal(SQLite::Database& database, const std::filesystem::path& original) {
    SQLite::Statement put(database, "UPDATE working SET original = ?");
    put.bind(1, original.string());
    put.exec();
}

std::optional<WorkingNotes> workingNotes(SQLite::Database& database) {
    SQLite::Statement row(database, "SELECT original, changed_at FROM working WHERE one = 1");
    if (!row.executeStep()) return std::nullopt;
    return WorkingNotes{row.getColumn(0).getString(), row.getColumn(1).getString()};
}

Outcome<Folio> workingFolio(SQLite::Database& database, const std::filesystem::path& file) {
    if (database.execAndGet("PRAGMA quick_check").getString() == "ok")
        return soundFolio(database, file);
    Problem problem;
    problem.code = ProblemCode::fileDamaged;
    problem.subject = file.string();
    return problem;
}

}  // namespace coutil
