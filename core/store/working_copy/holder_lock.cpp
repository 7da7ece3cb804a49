#include "core/store/working_copy/holder_lock.h"

#include <string>
#include <system_error>

#include <fcntl.h>
#include <sys/file.h>

namespace coutil {
namespace {

constexpr unsigned kOwnerOnly = 0600;

}  // namespace

std::filesystem::path lockOf(const std::filesystem::path& workingFile) {
    return std::filesystem::path(workingFile).replace_extension(".lock");
}

std::optional<OpenFile> holdLock(const std::filesystem::path& workingFile) {
    OpenFile lock = openFile(lockOf(workingFile), O_RDWR | O_CREAT | O_NOFOLLOW, kOwnerOnly);
    if (!lock.isOpen() || ::flock(lock.descriptor(), LOCK_EX | LOCK_NB) != 0) return std::nullopt;
    return lock;
}

void removeWorkingFile(const std::filesystem::path& workingFile) {
    std::error_code ignored;
    for (const char* part : {"", "-wal", "-shm", "-journal"})
        std::filesystem::remove(workingFile.string() + part, ignored);
    std::filesystem::remove(lockOf(workingFile), ignored);
}

}  // namespace coutil
