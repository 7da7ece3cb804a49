#pragma once

#include <QString>
#include <string>

#include "core/revision/folio.h"

namespace coutil {

// Today's date, ISO 8601.
[[nodiscard]] std::string today();

// A folio for a new client: one empty measurement set of the day and one garment drafted from it.
[[nodiscard]] Folio newFolio(const QString& client, LengthUnit unit);

// The folio with one more garment, drafted from `setId`; the new garment is the last.
[[nodiscard]] Folio withNewGarment(const Folio& folio, const QString& name, const Style& style,
                                   const std::string& setId);

// A name for a new garment that none in the folio has yet: "Corset", "Corset 2", ...
[[nodiscard]] QString freeGarmentName(const Folio& folio);

}  // namespace coutil
