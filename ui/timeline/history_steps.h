#pragma once

#include <QString>
#include <optional>
#include <string>

#include "core/problems/problem.h"

// What a maker does with the states of a garment, each one undo step, shown at once. A problem
// where it can't be done; nothing has changed then.
namespace coutil {

class FolioDocument;

// A copy of a pencil beside it: another way to solve the same fitting.
[[nodiscard]] std::optional<Problem> copyPencil(FolioDocument& document, const std::string& pencil);
[[nodiscard]] std::optional<Problem> rubOutPencil(FolioDocument& document,
                                                  const std::string& pencil);
// A new garment of the folio that begins with a pencil from a revision of another.
[[nodiscard]] std::optional<Problem> startGarment(FolioDocument& document,
                                                  const std::string& revision);
// The maker's own word for a pencil; empty takes it away.
void namePencil(FolioDocument& document, const std::string& pencil, const QString& name);

// A pencil may go as long as the garment keeps another state.
[[nodiscard]] bool mayRubOut(const FolioDocument& document);

}  // namespace coutil
