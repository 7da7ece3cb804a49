#pragma once

#include <optional>

#include "core/revision/folio.h"

namespace coutil {

class FolioDocument;

// The pattern a pencil's own alterations are drawn over: the ink it began from, or its block. Kept
// until the pencil begins elsewhere, since every keystroke asks for it.
class FitGround {
  public:
    // nullptr where a revision is on the table, or nothing that has a pattern.
    [[nodiscard]] const Pattern* of(const FolioDocument& document);

  private:
    std::optional<Pencil> pencil_;  // without what does not concern the block
    MeasurementSet set_;
    std::optional<Pattern> pattern_;
};

}  // namespace coutil
