#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// Work that a window left behind when it died: what the next start offers to recover.
struct Recoverable {
    std::filesystem::path workingFile;
    std::filesystem::path original;  // the folio it belongs to; empty when it was never saved
    std::string client;
    std::string changedAt;  // ISO 8601, UTC, seconds
};

// The open folio's shadow in the program's state folder: a SQLite database that takes every change
// as one transaction. Held by a lock while the program lives; kept when it dies, removed by
// discard().
class WorkingCopy {
  public:
    [[nodiscard]] static Outcome<std::shared_ptr<WorkingCopy>> begin(
        const std::filesystem::path& stateFolder, const Folio& folio,
        const std::filesystem::path& original);
    ~WorkingCopy();
    WorkingCopy(const WorkingCopy&) = delete;
    WorkingCopy& operator=(const WorkingCopy&) = delete;

    // One transaction; durable when it returns. `changedAt` as in Recoverable.
    [[nodiscard]] std::optional<Problem> record(const Folio& folio, const std::string& changedAt);
    void setOriginal(const std::filesystem::path& original);
    // Everything is safe in the folio (or the maker chose to drop it): removes the working file.
    void discard();

  private:
    struct State;
    explicit WorkingCopy(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

// Working files whose holder is gone, newest first. Those that are locked belong to a living window
// and are left out.
[[nodiscard]] std::vector<Recoverable> recoverableIn(const std::filesystem::path& stateFolder);

// The folio in a working file. Problems as readFolio.
[[nodiscard]] Outcome<Folio> recoveredFolio(const Recoverable& found);
void dropRecoverable(const Recoverable& found);

}  // namespace coutil
