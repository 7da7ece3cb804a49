#include <cerrno>

#include <fcntl.h>
#include <sys/stat.h>

#include "core/store/whole_file.h"
#include "core/store/whole_file/open_file.h"

namespace coutil {

Outcome<std::string> readWholeFile(const std::filesystem::path& file, std::size_t largestBytes) {
    const OpenFile source = openFile(file, O_RDONLY);
    if (!source.isOpen()) {
        const bool isMissing = errno == ENOENT || errno == ENOTDIR;
        return fileProblem(isMissing ? ProblemCode::fileMissing : ProblemCode::fileUnreadable, file,
                           errno);
    }
    std::string bytes;
    const int error = source.readAll(bytes, largestBytes);
    if (error != 0) return fileProblem(ProblemCode::fileUnreadable, file, error);
    return bytes;
}

}  // namespace coutil
