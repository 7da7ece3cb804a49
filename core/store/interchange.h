#pragma once

#include <string>
#include <vector>

#include "core/pattern/pattern.h"
#include "core/tracing/tracing.h"

namespace coutil {

// Drawings for other programs, in true millimetres. SVG: width and height in mm with a matching
// viewBox, one named group per panel and line kind, numbers with 4 decimals. DXF: ASTM D6673 layers
// in an R12 text file, chord error at most 0.1 mm. The title's client may be empty: then no name
// leaves the program.
[[nodiscard]] std::string writePatternSvg(const Pattern& pattern, const TracingTitle& title);
[[nodiscard]] std::string writePatternDxf(const Pattern& pattern, const TracingTitle& title);
[[nodiscard]] std::string writeTracingsSvg(const std::vector<Tracing>& tracings,
                                           const TracingTitle& title);
[[nodiscard]] std::string writeTracingsDxf(const std::vector<Tracing>& tracings,
                                           const TracingTitle& title);

}  // namespace coutil
