#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/problems/problem.h"

namespace coutil {

// Who may read a file that is new. A file that is replaced keeps its rights.
enum class NewFileRights { ownerOnly, asUsual };

inline constexpr std::size_t kLargestTextBytes = std::size_t{16} << 20;
inline constexpr std::size_t kLargestFolioBytes = std::size_t{1} << 30;

// The bytes of a file. Problems (one; the subject is the path, the detail the system's reason):
// fileMissing, fileUnreadable (a folder, no permission, longer than `largestBytes`).
[[nodiscard]] Outcome<std::string> readWholeFile(const std::filesystem::path& file,
                                                 std::size_t largestBytes = kLargestTextBytes);

// Writes a file as a whole: beside the target, synced, read back and compared, then renamed over
// it, and the folder synced. Killed at any moment, the target holds the old or the new bytes; what
// is left beside it (".NAME.saving") is taken away by the next write. A symbolic link is followed.
// A device or pipe (/dev/stdout) is written straight. Problems (one, nothing changed, nothing left
// behind): diskFull, fileUnwritable (also when the file is marked read-only or is a folder).
[[nodiscard]] std::optional<Problem> writeWholeFile(const std::filesystem::path& file,
                                                    std::string_view bytes,
                                                    NewFileRights rights = NewFileRights::asUsual);

}  // namespace coutil
