#pragma once

#include <filesystem>
#include <optional>

#include "core/store/whole_file/open_file.h"

namespace coutil {

// The lock file of a working file, held while the value lives and let go by the system when its
// program dies, however it dies. Nothing when another holder lives or the file can't be made.
[[nodiscard]] std::optional<OpenFile> holdLock(const std::filesystem::path& workingFile);

// "NAME.working" -> "NAME.lock".
[[nodiscard]] std::filesystem::path lockOf(const std::filesystem::path& workingFile);

// Takes the working file away with everything SQLite keeps beside it; the lock goes last, so that
// no other program takes the rest for work left behind.
void removeWorkingFile(const std::filesystem::path& workingFile);

}  // namespace coutil
