#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <sys/stat.h>

namespace coutil::test {

inline std::string bytesIn(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void putBytes(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream(file, std::ios::binary) << bytes;
}

// Everything about a file that a reader must not change.
struct FileState {
    std::string bytes;
    long long modifiedNs = 0;
    ino_t inode = 0;
    mode_t mode = 0;
    bool operator==(const FileState&) const = default;
};

inline FileState stateOf(const std::filesystem::path& file) {
    struct stat info {};
    if (::stat(file.c_str(), &info) != 0) return {};
    return {S_ISREG(info.st_mode) ? bytesIn(file) : std::string(),
            static_cast<long long>(info.st_mtim.tv_sec) * 1'000'000'000 + info.st_mtim.tv_nsec,
            info.st_ino, info.st_mode};
}

}  // namespace coutil::test
