#pragma once

#include <filesystem>

#include "core/store/whole_file/open_file.h"

namespace coutil {

// A new empty file beside a target, locked while it lives; taken away by the destructor unless it
// was moved over the target.
class SavingPlace {
  public:
    // Takes away what a killed program left beside `target`, then makes the file. Returns 0 or an
    // errno. Another program that is saving the same target right now is left alone.
    [[nodiscard]] int makeBeside(const std::filesystem::path& target, unsigned rights);
    SavingPlace() = default;
    SavingPlace(const SavingPlace&) = delete;
    SavingPlace& operator=(const SavingPlace&) = delete;
    ~SavingPlace();

    [[nodiscard]] const OpenFile& file() const { return file_; }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    // Renames over the target; 0 or an errno.
    [[nodiscard]] int moveOver(const std::filesystem::path& target);

  private:
    [[nodiscard]] int tryMake(const std::filesystem::path& path, unsigned rights);

    OpenFile file_;
    std::filesystem::path path_;
};

}  // namespace coutil
