#include <cerrno>
#include <system_error>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/store/whole_file.h"
#include "core/store/whole_file/open_file.h"
#include "core/store/whole_file/saving_place.h"

namespace coutil {
namespace {

namespace fs = std::filesystem;

constexpr mode_t kOwnerOnly = 0600;
constexpr mode_t kAsUsual = 0666;  // less what the user's mask takes away
constexpr mode_t kAnyWrite = 0222;
constexpr mode_t kRightBits = 0777;

int writeAndSync(const OpenFile& file, std::string_view bytes) {
    if (const int error = file.writeAll(bytes); error != 0) return error;
    return ::fsync(file.descriptor()) == 0 ? 0 : errno;
}

int readBackDiffers(const fs::path& path, std::string_view bytes) {
    const OpenFile again = openFile(path, O_RDONLY);
    if (!again.isOpen()) return errno;
    std::string got;
    if (const int error = again.readAll(got, bytes.size()); error != 0) return error;
    return got == bytes ? 0 : EIO;
}

// The rename itself must survive a power cut. Some file systems can't sync a folder (EINVAL); there
// is nothing more to do then, and the target is whole either way.
void syncFolder(const fs::path& folder) {
    const OpenFile opened = openFile(folder.empty() ? "." : folder, O_RDONLY | O_DIRECTORY);
    if (opened.isOpen()) ::fsync(opened.descriptor());
}

int writeStraight(const fs::path& device, std::string_view bytes) {
    const OpenFile opened = openFile(device, O_WRONLY);
    return opened.isOpen() ? opened.writeAll(bytes) : errno;
}

int replace(const fs::path& target, std::string_view bytes, mode_t rights, bool isNew) {
    SavingPlace place;
    if (const int error = place.makeBeside(target, isNew ? rights : kOwnerOnly); error != 0)
        return error;
    if (!isNew && ::fchmod(place.file().descriptor(), rights) != 0) return errno;
    if (const int error = writeAndSync(place.file(), bytes); error != 0) return error;
    if (const int error = readBackDiffers(place.path(), bytes); error != 0) return error;
    if (const int error = place.moveOver(target); error != 0) return error;
    syncFolder(target.parent_path());
    return 0;
}

int writeTo(const fs::path& target, std::string_view bytes, NewFileRights rights) {
    struct stat old {};
    if (::stat(target.c_str(), &old) != 0) {
        if (errno != ENOENT) return errno;
        return replace(target, bytes, rights == NewFileRights::ownerOnly ? kOwnerOnly : kAsUsual,
                       true);
    }
    if (S_ISDIR(old.st_mode)) return EISDIR;
    if (!S_ISREG(old.st_mode)) return writeStraight(target, bytes);
    // Renaming would get round a file's own read-only mark (and root is never refused): ask first.
    if ((old.st_mode & kAnyWrite) == 0) return EACCES;
    if (::access(target.c_str(), W_OK) != 0) return errno;
    return replace(target, bytes, old.st_mode & kRightBits, false);
}

}  // namespace

std::optional<Problem> writeWholeFile(const fs::path& file, std::string_view bytes,
                                      NewFileRights rights) {
    // Behind a symbolic link it is the file that is replaced, not the link.
    std::error_code unresolved;
    const fs::path real =
        fs::is_symlink(file, unresolved) ? fs::weakly_canonical(file, unresolved) : file;
    const int error = writeTo(unresolved ? file : real, bytes, rights);
    if (error == 0) return std::nullopt;
    return fileProblem(ProblemCode::fileUnwritable, file, error);
}

}  // namespace coutil
