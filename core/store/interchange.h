#pragma once

#include <string>
#include <vector>

#include "core/pattern/pattern.h"
#include "core/problems/problem.h"
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

// How a laser or a cutter is to cut the tracings.
struct CutterChoices {
    double kerfMm = 0;         // what the beam or blade takes away across its way, 0 to 2
    bool mirroredToo = false;  // the twin of every mirrored pair as well
};
inline constexpr double kWidestKerfMm = 2;

// Cutting lines only, for a machine and one layer of material: pieces on the fold unfolded, holes
// before notches before the outline, pieces by the nearest next one, each line half the kerf to the
// waste side (interchange/cutter_lines.h). No words; SVG in the groups of the other drawings, DXF
// as plain polylines in the order of cutting on layers 1, 4 and 11, chord error 0.005 mm. Problems
// name the panel: those of offsetOutline().
[[nodiscard]] Outcome<std::string> writeCutterSvg(const std::vector<Tracing>& tracings,
                                                  const TracingTitle& title,
                                                  const CutterChoices& choices);
[[nodiscard]] Outcome<std::string> writeCutterDxf(const std::vector<Tracing>& tracings,
                                                  const CutterChoices& choices);

}  // namespace coutil
