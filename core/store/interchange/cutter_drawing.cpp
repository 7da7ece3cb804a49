#include <string>

#include "core/geometry/tolerances.h"
#include "core/store/interchange.h"
#include "core/store/interchange/cutter_lines.h"
#include "core/store/interchange/cutter_pieces.h"
#include "core/store/interchange/dxf_writer.h"
#include "core/store/interchange/svg_writer.h"

namespace coutil {

namespace {

using interchange::CutterLine;
using interchange::CutterPiece;
using interchange::DxfLayer;

constexpr double kRoundMm = 5;  // bare material round the pieces

// One thin line of one colour: what is cut is told from what is not by nothing else.
constexpr std::string_view kCutStyle = ".cut{fill:none;stroke:#f00;stroke-width:0.1}";

using Drawn = Outcome<std::string>;

Outcome<std::vector<CutterPiece>> cutsOf(const std::vector<Tracing>& tracings,
                                         const CutterChoices& choices) {
    return cutterLines(interchange::cutterPieces(tracings, choices.mirroredToo), choices.kerfMm);
}

std::string svgOf(const std::vector<CutterPiece>& pieces, const std::string& title) {
    Box page;
    for (const CutterPiece& piece : pieces) {
        for (const CutterLine& line : piece.lines) page.include(boundsOf(line.path));
    }
    if (page.isEmpty()) page.include(Point::Zero());
    page.lowest -= Vector::Constant(kRoundMm);
    page.highest += Vector::Constant(kRoundMm);
    interchange::SvgWriter svg(page, title, kCutStyle);
    for (const CutterPiece& piece : pieces) {
        const std::string id = "panel-" + piece.name;
        svg.beginPanel(id, piece.name, piece.origin);
        for (std::size_t i = 0; i < piece.lines.size(); ++i) {
            const CutterLine& line = piece.lines[i];
            const bool isFirst = i == 0 || piece.lines[i - 1].kind != line.kind;
            const bool isLast = i + 1 == piece.lines.size() || piece.lines[i + 1].kind != line.kind;
            if (isFirst) svg.beginGroup(id + "-" + std::string(keyOf(line.kind)));
            svg.path("cut", line.path, line.isClosed);
            if (isLast) svg.endGroup();
        }
        svg.endGroup();
    }
    return svg.finished();
}

DxfLayer layerOf(LineKind kind) {
    if (kind == LineKind::eyelets) return DxfLayer::cutOuts;
    return kind == LineKind::notches ? DxfLayer::notches : DxfLayer::boundary;
}

// Plain lines in order, in no blocks: a machine's program cuts them as they come.
std::string dxfOf(const std::vector<CutterPiece>& pieces) {
    interchange::DxfWriter dxf;
    dxf.endBlocks();
    for (const CutterPiece& piece : pieces) {
        for (const CutterLine& line : piece.lines) {
            std::vector<Point> points = flattened(line.path, tolerance::kCutFlatnessMm);
            if (line.isClosed) points.pop_back();
            dxf.polyline(layerOf(line.kind), points, line.isClosed);
        }
    }
    return dxf.finished();
}

}  // namespace

Drawn writeCutterSvg(const std::vector<Tracing>& tracings, const TracingTitle& title,
                     const CutterChoices& choices) {
    auto cuts = cutsOf(tracings, choices);
    if (!cuts) return Drawn::failed(std::move(cuts.problems));
    return {svgOf(*cuts, title.garment), std::move(cuts.problems)};
}

Drawn writeCutterDxf(const std::vector<Tracing>& tracings, const CutterChoices& choices) {
    auto cuts = cutsOf(tracings, choices);
    if (!cuts) return Drawn::failed(std::move(cuts.problems));
    return {dxfOf(*cuts), std::move(cuts.problems)};
}

}  // namespace coutil
