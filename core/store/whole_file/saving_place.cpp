#include "core/store/whole_file/saving_place.h"

#include <cerrno>
#include <cstdio>
#include <string>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace coutil {
namespace {

// Names of 255 bytes are the limit of usual file systems; ours are longer than the target's.
constexpr std::size_t kLongestStem = 200;
constexpr int kMostSavers = 16;

std::filesystem::path placeFor(const std::filesystem::path& target, int number) {
    std::string name(".");
    name += target.filename().string().substr(0, kLongestStem);
    name += ".saving";
    if (number > 0) name += std::to_string(number);
    return target.parent_path() / name;
}

bool isStillAt(const OpenFile& file, const std::filesystem::path& path) {
    struct stat here {};
    struct stat there {};
    return ::fstat(file.descriptor(), &here) == 0 && ::lstat(path.c_str(), &there) == 0 &&
           here.st_dev == there.st_dev && here.st_ino == there.st_ino;
}

// A leftover is a file that nobody holds the lock of.
void removeIfLeftOver(const std::filesystem::path& path) {
    const OpenFile left = openFile(path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK);
    if (!left.isOpen() || ::flock(left.descriptor(), LOCK_EX | LOCK_NB) != 0) return;
    if (isStillAt(left, path)) ::unlink(path.c_str());
}

}  // namespace

int SavingPlace::tryMake(const std::filesystem::path& path, unsigned rights) {
    removeIfLeftOver(path);
    OpenFile made = openFile(path, O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW, rights);
    if (!made.isOpen()) return errno;
    // Between making and locking another saver may have taken it for a leftover. Where the file
    // system knows no locks nobody can, and the file is ours all the same.
    const bool isTaken = ::flock(made.descriptor(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK;
    if (isTaken || !isStillAt(made, path)) return EEXIST;
    file_ = std::move(made);
    path_ = path;
    return 0;
}

int SavingPlace::makeBeside(const std::filesystem::path& target, unsigned rights) {
    int error = EEXIST;
    for (int number = 0; error == EEXIST && number < kMostSavers; ++number)
        error = tryMake(placeFor(target, number), rights);
    return error;
}

int SavingPlace::moveOver(const std::filesystem::path& target) {
    if (::rename(path_.c_str(), target.c_str()) != 0) return errno;
    path_.clear();
    return 0;
}

SavingPlace::~SavingPlace() {
    if (!path_.empty()) ::unlink(path_.c_str());
}

}  // namespace coutil
