#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace SQLite {
class Database;
}

namespace coutil {

// What a working copy knows beside the folio.
struct WorkingNotes {
    std::filesystem::path original;  // empty: never saved
    std::string changedAt;           // empty: nothing was recorded since it began
};

// All throw SQLite::Exception. The database writes ahead (WAL) and syncs at every commit: one sync
// a change, and durable when the commit returns.
[[nodiscard]] SQLite::Database newWorkingDatabase(const std::filesystem::path& file);
[[nodiscard]] SQLite::Database existingWorkingDatabase(const std::filesystem::path& file);
void putWorking(SQLite::Database& database, const Folio& folio, const WorkingNotes& notes);
void putOriginal(SQLite::Database& database, const std::filesystem::path& original);
[[nodiscard]] std::optional<WorkingNotes> workingNotes(SQLite::Database& database);
// Problems as readFolio, with `file` as subject.
[[nodiscard]] Outcome<Folio> workingFolio(SQLite::Database& database,
                                          const std::filesystem::path& file);

}  // namespace coutil
