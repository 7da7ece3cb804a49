#include <algorithm>
#include <system_error>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <boost/date_time/posix_time/conversion.hpp>
#include <boost/date_time/posix_time/time_formatters_limited.hpp>
#include <sys/stat.h>

#include "core/store/folio_file.h"
#include "core/store/working_copy.h"
#include "core/store/working_copy/holder_lock.h"
#include "core/store/working_copy/working_database.h"

namespace coutil {
namespace {

namespace fs = std::filesystem;

struct LeftBehind {
    Folio folio;
    WorkingNotes notes;
};

Problem problemOf(ProblemCode code, const fs::path& file) {
    Problem problem;
    problem.code = code;
    problem.subject = file.string();
    return problem;
}

Outcome<LeftBehind> leftBehindIn(const fs::path& file) {
    try {
        SQLite::Database database = existingWorkingDatabase(file);
        Outcome<Folio> folio = workingFolio(database, file);
        if (!folio) return Outcome<LeftBehind>::failed(std::move(folio.problems));
        std::optional<WorkingNotes> notes = workingNotes(database);
        if (!notes) return problemOf(ProblemCode::fileDamaged, file);
        return LeftBehind{std::move(*folio), std::move(*notes)};
    } catch (const SQLite::Exception&) {
        return problemOf(ProblemCode::fileDamaged, file);
    }
}

std::string timeOfFile(const fs::path& file) {
    struct stat info {};
    if (::stat(file.c_str(), &info) != 0) return {};
    return boost::posix_time::to_iso_extended_string(
               boost::posix_time::from_time_t(info.st_mtime)) +
           "Z";
}

bool isAlreadySaved(const LeftBehind& left) {
    if (left.notes.original.empty()) return false;
    const Outcome<Folio> saved = readFolio(left.notes.original);
    return saved && *saved == left.folio;
}

std::optional<Recoverable> recoverableAt(const fs::path& file) {
    const std::optional<OpenFile> lock = holdLock(file);
    if (!lock) return std::nullopt;
    const std::string fileTime = timeOfFile(file);
    const Outcome<LeftBehind> left = leftBehindIn(file);
    if (!left) return std::nullopt;
    if (isAlreadySaved(*left)) {
        removeWorkingFile(file);
        return std::nullopt;
    }
    const std::string& changedAt = left->notes.changedAt;
    return Recoverable{file, left->notes.original, left->folio.client,
                       changedAt.empty() ? fileTime : changedAt};
}

}  // namespace

std::vector<Recoverable> recoverableIn(const fs::path& stateFolder) {
    std::vector<Recoverable> found;
    std::error_code error;
    for (fs::directory_iterator entry(stateFolder, error), end; !error && entry != end;
         entry.increment(error)) {
        if (entry->path().extension() != ".working") continue;
        if (auto recoverable = recoverableAt(entry->path())) found.push_back(*recoverable);
    }
    std::ranges::sort(found, [](const Recoverable& a, const Recoverable& b) {
        return a.changedAt != b.changedAt ? a.changedAt > b.changedAt
                                          : a.workingFile < b.workingFile;
    });
    return found;
}

Outcome<Folio> recoveredFolio(const Recoverable& found) {
    std::error_code error;
    if (!fs::exists(found.workingFile, error))
        return problemOf(ProblemCode::fileMissing, found.workingFile);
    Outcome<LeftBehind> left = leftBehindIn(found.workingFile);
    if (!left) return Outcome<Folio>::failed(std::move(left.problems));
    return std::move(left->folio);
}

void dropRecoverable(const Recoverable& found) {
    // A holder that has come to life again keeps its file.
    if (const std::optional<OpenFile> lock = holdLock(found.workingFile))
        removeWorkingFile(found.workingFile);
}

}  // namespace coutil
