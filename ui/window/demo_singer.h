#pragma once

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// The client that the program brings along: a singer of a community theatre's operetta, invented,
// with the measurements and the style of resources/demo. Always a new folio, never saved.
[[nodiscard]] Outcome<Folio> demoSinger();

}  // namespace coutil
