#pragma once

#include <string>

#include "core/revision/folio.h"

// Garments with a past, for tests of the timeline: confirmed by core's own hand from the demo
// singer's folio.
namespace coutil {

// The pencil of the singer's garment that goes on from `parent` (digest; empty: her first pencil)
// with one seam taken in, confirmed on `day`. Ends the test program when it can't be confirmed.
[[nodiscard]] Folio withConfirmed(const Folio& folio, const std::string& parent, double takenInMm,
                                  const std::string& day);
[[nodiscard]] Folio withFitting(const Folio& folio, const std::string& revision,
                                const std::string& day);
[[nodiscard]] Folio withPencil(const Folio& folio, const std::string& parent, const std::string& id,
                               const std::string& name = {});

[[nodiscard]] std::string digestOf(const Folio& folio, int number);

// Block 2 March, fitting 14 March, revision 2 on 18 March, fitting in April and revision 3; a
// branch from revision 1 (4) and a pencil on each line.
[[nodiscard]] Folio grownFolio();

}  // namespace coutil
