#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <utility>

#include "core/problems/problem.h"

namespace coutil {

// A file descriptor that closes itself; -1 is none.
class OpenFile {
  public:
    OpenFile() = default;
    explicit OpenFile(int descriptor) : descriptor_(descriptor) {}
    OpenFile(OpenFile&& other) noexcept : descriptor_(std::exchange(other.descriptor_, -1)) {}
    OpenFile& operator=(OpenFile&& other) noexcept;
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile();

    [[nodiscard]] bool isOpen() const { return descriptor_ >= 0; }
    [[nodiscard]] int descriptor() const { return descriptor_; }

    // Both return 0 or an errno.
    [[nodiscard]] int writeAll(std::string_view bytes) const;
    [[nodiscard]] int readAll(std::string& bytes, std::size_t largestBytes) const;

  private:
    int descriptor_ = -1;
};

// Opens with close-on-exec; check isOpen() and errno.
[[nodiscard]] OpenFile openFile(const std::filesystem::path& file, int flags, unsigned rights = 0);

// diskFull for the errno values that mean no room (disk, quota, file size limit), else `otherwise`.
[[nodiscard]] Problem fileProblem(ProblemCode otherwise, const std::filesystem::path& file,
                                  int error);

}  // namespace coutil
