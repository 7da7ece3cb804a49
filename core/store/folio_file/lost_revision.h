#pragma once

#include <filesystem>
#include <optional>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// The first revision in the file that would be gone if the folio were written over it: problem
// fileUnwritable as writeFolio() says it. Nothing where the file holds none, or is no folio, or
// can't be read.
[[nodiscard]] std::optional<Problem> revisionLostBy(const Folio& folio,
                                                    const std::filesystem::path& file);

}  // namespace coutil
