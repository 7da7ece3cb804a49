#include "core/store/whole_file/open_file.h"

#include <cerrno>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace coutil {

OpenFile& OpenFile::operator=(OpenFile&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

OpenFile::~OpenFile() {
    if (descriptor_ >= 0) ::close(descriptor_);
}

int OpenFile::writeAll(std::string_view bytes) const {
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor_, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return errno;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

int OpenFile::readAll(std::string& bytes, std::size_t largestBytes) const {
    constexpr std::size_t kStep = std::size_t{1} << 16;
    std::size_t size = 0;
    for (;;) {
        bytes.resize(size + kStep);
        const ssize_t got = ::read(descriptor_, bytes.data() + size, kStep);
        if (got < 0 && errno == EINTR) continue;
        bytes.resize(size + (got > 0 ? static_cast<std::size_t>(got) : 0));
        if (got < 0) return errno;
        if (got == 0) return 0;
        size = bytes.size();
        if (size > largestBytes) return EFBIG;
    }
}

OpenFile openFile(const std::filesystem::path& file, int flags, unsigned rights) {
    int descriptor = -1;
    do {
        descriptor = ::open(file.c_str(), flags | O_CLOEXEC, rights);
    } while (descriptor < 0 && errno == EINTR);
    return OpenFile(descriptor);
}

Problem fileProblem(ProblemCode otherwise, const std::filesystem::path& file, int error) {
    const bool noRoom = error == ENOSPC || error == EDQUOT;
    const bool tooLong = error == EFBIG && otherwise == ProblemCode::fileUnwritable;
    Problem problem;
    problem.code = noRoom || tooLong ? ProblemCode::diskFull : otherwise;
    problem.subject = file.string();
    problem.detail = std::generic_category().message(error);
    return problem;
}

}  // namespace coutil
