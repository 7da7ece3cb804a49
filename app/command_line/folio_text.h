#pragma once

#include <string>

#include "core/revision/folio.h"

namespace coutil {

// What `info` prints for people: client, measurement sets, garments and timeline, in the user's
// language and the maker's unit.
[[nodiscard]] std::string folioText(const Folio& folio);

}  // namespace coutil
