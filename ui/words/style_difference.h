#pragma once

#include <QStringList>

#include "core/block/style.h"

namespace coutil {

// The terms of the style entries in which two styles differ ("Lacing gap", "Ease: waist"), in the
// order of a style file; empty when they are the same.
[[nodiscard]] QStringList styleDifference(const Style& before, const Style& after);

}  // namespace coutil
