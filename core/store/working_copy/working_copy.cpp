#include "core/store/working_copy.h"

#include <cerrno>
#include <system_error>
#include <utility>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>

#include "core/store/folio_file/photo_rows.h"
#include "core/store/uuid.h"
#include "core/store/working_copy/holder_lock.h"
#include "core/store/working_copy/working_database.h"

namespace coutil {
namespace {

namespace fs = std::filesystem;

constexpr mode_t kOwnerFolder = 0700;
constexpr unsigned kOwnerOnly = 0600;

Problem problemOf(const SQLite::Exception& error, const fs::path& file) {
    Problem problem;
    problem.code =
        error.getErrorCode() == SQLITE_FULL ? ProblemCode::diskFull : ProblemCode::fileUnwritable;
    problem.subject = file.string();
    problem.detail = error.what();
    return problem;
}

// The readings of a body are nobody else's business: the folder is the owner's alone.
int makeStateFolder(const fs::path& folder) {
    std::error_code error;
    if (fs::is_directory(folder, error)) return 0;
    if (folder.has_parent_path()) fs::create_directories(folder.parent_path(), error);
    return ::mkdir(folder.c_str(), kOwnerFolder) == 0 || errno == EEXIST ? 0 : errno;
}

// SQLite gives its side files the rights of the database, so the database is made first.
int makeOwnersFile(const fs::path& file) {
    return openFile(file, O_RDWR | O_CREAT | O_EXCL, kOwnerOnly).isOpen() ? 0 : errno;
}

}  // namespace

struct WorkingCopy::State {
    fs::path file;
    WorkingNotes notes;
    OpenFile lock;
    std::optional<SQLite::Database> database;  // nothing after discard()
};

WorkingCopy::WorkingCopy(std::unique_ptr<State> state) : state_(std::move(state)) {}

WorkingCopy::~WorkingCopy() = default;

Outcome<std::shared_ptr<WorkingCopy>> WorkingCopy::begin(const fs::path& stateFolder,
                                                         const Folio& folio,
                                                         const fs::path& original) {
    if (auto problem = photoTooLargeIn(folio)) return *problem;
    auto state = std::make_unique<State>();
    state->file = stateFolder / (newUuid() + ".working");
    state->notes.original = original.empty() ? original : fs::absolute(original);
    if (const int error = makeStateFolder(stateFolder); error != 0)
        return fileProblem(ProblemCode::fileUnwritable, stateFolder, error);
    std::optional<OpenFile> lock = holdLock(state->file);
    if (!lock) return fileProblem(ProblemCode::fileUnwritable, lockOf(state->file), errno);
    state->lock = std::move(*lock);
    if (const int error = makeOwnersFile(state->file); error != 0)
        return fileProblem(ProblemCode::fileUnwritable, state->file, error);
    try {
        state->database.emplace(newWorkingDatabase(state->file));
        putWorking(*state->database, folio, state->notes);
    } catch (const SQLite::Exception& error) {
        state->database.reset();
        removeWorkingFile(state->file);
        return problemOf(error, state->file);
    }
    return std::shared_ptr<WorkingCopy>(new WorkingCopy(std::move(state)));
}

std::optional<Problem> WorkingCopy::record(const Folio& folio, const std::string& changedAt) {
    if (auto problem = photoTooLargeIn(folio)) return problem;
    try {
        if (!state_->database) throw SQLite::Exception("the working copy was discarded");
        WorkingNotes notes{state_->notes.original, changedAt};
        putWorking(*state_->database, folio, notes);
        state_->notes = std::move(notes);
        return std::nullopt;
    } catch (const SQLite::Exception& error) {
        return problemOf(error, state_->file);
    }
}

void WorkingCopy::setOriginal(const fs::path& original) {
    state_->notes.original = original.empty() ? original : fs::absolute(original);
    try {
        if (state_->database) putOriginal(*state_->database, state_->notes.original);
    } catch (const SQLite::Exception&) {
        // The next record() writes it again and reports what is wrong with the disk.
    }
}

void WorkingCopy::discard() {
    if (!state_->database) return;
    state_->database.reset();
    removeWorkingFile(state_->file);
    state_->lock = OpenFile();
}

}  // namespace coutil
