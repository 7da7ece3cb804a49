#pragma once

#include "core/revision/folio.h"

namespace coutil {

// An invented singer of the theatre's chorus with one garment of default style, in centimetres.
// Everything the corset block needs is measured but the high hip.
[[nodiscard]] Folio inventedFolio();

}  // namespace coutil
