#pragma once

#include <optional>

#include "core/measurements/measurement.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

class FolioDocument;

// What lies on the table while one measures: the panels that follow from the readings; before
// anything could be drafted the drawn body with the tape of `shown`.
[[nodiscard]] TableScene measureScene(const FolioDocument& document,
                                      std::optional<Measurement> shown);

}  // namespace coutil
