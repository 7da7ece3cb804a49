#pragma once

#include "core/revision/folio.h"

namespace coutil::test {

// An invented singer with two measurement sets and two garments in pencil, nothing of the fit
// history: what tests/data/folios/schema_1.coutil holds.
[[nodiscard]] Folio sampleBlocks(int variant = 0);

// The same with a history: revisions with parents in both garments, several pencils with every kind
// of alteration, fittings with every kind of mark, photos. Every kind of style entry is set to
// something that is not its default. `variant` changes figures and texts, so that states differ;
// revisions are the same in all. sampleHistory(0) is what tests/data/folios/schema_2.coutil holds.
[[nodiscard]] Folio sampleHistory(int variant = 0);

// The same with choices of making-up and tracing in the first garment.
[[nodiscard]] Folio sampleFolio(int variant = 0);

}  // namespace coutil::test
