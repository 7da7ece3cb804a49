#include "core/store/folio_file/folio_image.h"

#include <cstring>
#include <memory>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include "core/store/folio_file.h"
#include "core/store/folio_file/folio_header.h"
#include "core/store/folio_file/folio_rows.h"
#include "core/store/folio_file/folio_schema.h"
#include "core/store/folio_file/photo_rows.h"
#include "core/store/folio_file/sound_folio.h"

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, const std::filesystem::path& file, std::string detail = {}) {
    Problem problem;
    problem.code = code;
    problem.subject = file.string();
    problem.detail = std::move(detail);
    return problem;
}

SQLite::Database emptyMemory() {
    return SQLite::Database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
}

std::string bytesOf(SQLite::Database& database) {
    sqlite3_int64 size = 0;
    const std::unique_ptr<unsigned char, decltype(&sqlite3_free)> bytes(
        sqlite3_serialize(database.getHandle(), "main", &size, 0), &sqlite3_free);
    if (!bytes) throw SQLite::Exception("no memory for the folio", SQLITE_NOMEM);
    return {reinterpret_cast<const char*>(bytes.get()), static_cast<std::size_t>(size)};
}

// Nothing that a prepared file brings along may run: no triggers, no views, no functions in its
// schema, no writing to the inner tables.
void harden(SQLite::Database& database) {
    sqlite3* handle = database.getHandle();
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    database.exec("PRAGMA cell_size_check = ON");
}

// SQLite takes over a copy of the bytes, so an upgrade can work on it.
SQLite::Database databaseFrom(std::string_view bytes) {
    SQLite::Database database = emptyMemory();
    auto* copy = static_cast<unsigned char*>(sqlite3_malloc64(bytes.size()));
    if (copy == nullptr) throw SQLite::Exception("no memory for the folio", SQLITE_NOMEM);
    std::memcpy(copy, bytes.data(), bytes.size());
    const auto size = static_cast<sqlite3_int64>(bytes.size());
    const int result =
        sqlite3_deserialize(database.getHandle(), "main", copy, size, size,
                            SQLITE_DESERIALIZE_FREEONCLOSE | SQLITE_DESERIALIZE_RESIZEABLE);
    if (result != SQLITE_OK) throw SQLite::Exception(database.getHandle(), result);
    harden(database);
    return database;
}

}  // namespace

Outcome<std::string> folioImage(const Folio& folio, const std::filesystem::path& file) {
    if (auto problem = photoTooLargeIn(folio)) return *problem;
    try {
        SQLite::Database database = emptyMemory();
        createFolioTables(database);
        SQLite::Transaction all(database);
        putFolioRows(database, folio);
        all.commit();
        return bytesOf(database);
    } catch (const SQLite::Exception& error) {
        return problemOf(ProblemCode::fileUnwritable, file, error.what());
    }
}

Outcome<Folio> folioFromImage(std::string_view bytes, const std::filesystem::path& file) {
    if (auto problem = checkFolioHeader(bytes, file)) return *problem;
    try {
        SQLite::Database database = databaseFrom(bytes);
        if (database.execAndGet("PRAGMA integrity_check").getString() != "ok")
            return problemOf(ProblemCode::fileDamaged, file);
        return soundFolio(database, file);
    } catch (const SQLite::Exception&) {
        return problemOf(ProblemCode::fileDamaged, file);
    }
}

std::vector<HeldRevision> revisionsHeldIn(std::string_view bytes) {
    if (!hasFolioMark(bytes)) return {};
    std::vector<HeldRevision> held;
    try {
        SQLite::Database database = databaseFrom(bytes);
        SQLite::Statement rows(database,
                               "SELECT revision.digest, revision.number, "
                               "coalesce(garment.name, revision.garment) FROM revision "
                               "LEFT JOIN garment ON garment.id = revision.garment "
                               "ORDER BY revision.garment, revision.number");
        while (rows.executeStep()) {
            held.push_back({rows.getColumn(0).getString(), rows.getColumn(1).getInt(),
                            rows.getColumn(2).getString()});
        }
    } catch (const SQLite::Exception&) {
        return held;  // as far as they could be read
    }
    return held;
}

}  // namespace coutil
