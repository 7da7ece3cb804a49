#pragma once

#include <QStringList>

#include "core/revision/folio.h"
#include "core/units/length.h"

namespace coutil {

// What a revision, or a pencil so far, changed since its parent, one sentence an alteration; empty
// for a block as it was drafted. Lengths in `unit`.
[[nodiscard]] QStringList changesOf(const Folio& folio, const Revision& revision, LengthUnit unit);
[[nodiscard]] QStringList changesOf(const Folio& folio, const Pencil& pencil, LengthUnit unit);

}  // namespace coutil
