#pragma once

#include <QString>
#include <filesystem>

namespace coutil {

// Where working copies live: $XDG_STATE_HOME/coutil, else ~/.local/state/coutil (XDG Base Directory
// Specification 0.8); under QStandardPaths' test mode a folder of its own. Not created here.
[[nodiscard]] std::filesystem::path stateFolder();

// File names between Qt and the standard library, in the system's encoding of file names.
[[nodiscard]] std::filesystem::path pathOf(const QString& fileName);
[[nodiscard]] QString fileNameOf(const std::filesystem::path& path);

}  // namespace coutil
