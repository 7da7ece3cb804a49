#include "app/command_line/drawing_back.h"

#include <algorithm>

#include "app/command_line/cutter_options.h"
#include "core/store/drawing_svg.h"
#include "core/store/interchange.h"
#include "core/store/whole_file.h"

namespace coutil {
namespace {

bool hasLines(const Drawing& drawing, LineKind kind) {
    return std::ranges::any_of(drawing.panels, [&](const DrawnPanel& panel) {
        return std::ranges::find(panel.lines, kind, &DrawnLine::kind) != panel.lines.end();
    });
}

bool hasTwins(const Drawing& drawing) {
    return std::ranges::any_of(
        drawing.panels, [](const DrawnPanel& panel) { return panel.name.ends_with(" mirrored"); });
}

}  // namespace

Outcome<DrawingCheck> checkDrawingBack(const Call& call, const Pattern& pattern,
                                       const std::vector<Tracing>& tracings) {
    using Checked = Outcome<DrawingCheck>;
    const auto text = readWholeFile(*call.value("--drawing"));
    if (!text) return Checked::failed(text.problems);
    const Outcome<Drawing> found = readDrawingSvg(*text);
    if (!found) return Checked::failed(found.problems);
    Outcome<CutterChoices> choices = readCutterChoices(call);
    if (!choices) return Checked::failed(choices.problems);
    choices->mirroredToo = hasTwins(*found);
    Outcome<std::string> wanted;
    if (!hasLines(*found, LineKind::sewing)) {
        wanted = writeCutterSvg(tracings, {}, *choices);
    } else if (hasLines(*found, LineKind::cutting)) {
        wanted = writeTracingsSvg(tracings, {});
    } else {
        wanted = writePatternSvg(pattern, {});
    }
    if (!wanted) return Checked::failed(wanted.problems);
    const Outcome<Drawing> expected = readDrawingSvg(*wanted);
    if (!expected) return Checked::failed(expected.problems);
    return checkDrawing(*found, *expected);
}

}  // namespace coutil
