#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/path.h"
#include "core/problems/problem.h"
#include "core/tracing/line_kind.h"

namespace coutil {

// One line of a drawing: an edge by its name, a level by its key, others without a name.
struct DrawnLine {
    LineKind kind = LineKind::sewing;
    std::string name;
    Path path;
    bool isClosed = false;
};

// What a drawing shows of one panel, mm, y up. In the panel's own frame when the drawing says where
// that lies (the program that wrote it did), else from the lower left corner of the page.
struct DrawnPanel {
    std::string name;
    std::vector<DrawnLine> lines;
};

// An SVG that went out and may have been through another program.
struct Drawing {
    double widthMm = 0;
    double heightMm = 0;
    std::vector<DrawnPanel> panels;
};

// Reads what writePatternSvg(), writeTracingsSvg() and writeCutterSvg() wrote, as it stands or as a
// drawing program saved it again: paths with any command but elliptic arcs, straight lines,
// transforms, other units, further groups; panels and kinds of lines are known by their groups'
// ids. As written, every control point comes back within 0.0002 mm. Entities are not expanded and
// nothing outside the text is read. Problems, one: drawingTooLarge (subject "bytes" or "depth";
// figures "value", "highest"), drawingUnreadable (detail the place in question; figure "line"),
// drawingForeign (no panel in it).
[[nodiscard]] Outcome<Drawing> readDrawingSvg(std::string_view svg);

}  // namespace coutil
