#pragma once

#include <QString>
#include <string>

#include "core/revision/folio.h"

namespace coutil {

// A date as people write it; the text itself where it is no ISO 8601 date.
[[nodiscard]] QString dateText(const std::string& isoDate);

// "revision 2, 18 Mar 2026".
[[nodiscard]] QString revisionName(const Revision& revision);

// "pencil", or "pencil “wider hip”" where it has a name of its own.
[[nodiscard]] QString pencilName(const Pencil& pencil);

}  // namespace coutil
