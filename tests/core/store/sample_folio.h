#pragma once

#include "core/revision/folio.h"

namespace coutil::test {

// An invented singer with two measurement sets, two garments and every kind of style entry set to
// something that is not its default. `variant` changes figures and texts, so that states differ.
[[nodiscard]] Folio sampleFolio(int variant = 0);

}  // namespace coutil::test
