#pragma once

#include <string>

#include "core/revision/folio.h"
#include "core/revision/pencils.h"

namespace coutil {

// A new pencil from a confirmed revision, without alterations of its own yet: its style and
// measurements are in force, its digest is the parent.
[[nodiscard]] Pencil pencilFrom(const Revision& revision, const NewPencil& pencil);

// Puts another style in force. A block (no parent) is drafted by it; over a revision it is an
// alteration: the last one if that changes the style already, else a new one with an id derived
// from the pencil's.
void setStyle(Pencil& pencil, const Style& style);

// The same for another measurement set.
void setMeasurementSet(Pencil& pencil, const std::string& set);

}  // namespace coutil
