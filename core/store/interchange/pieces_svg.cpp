#include "core/store/interchange.h"
#include "core/store/interchange/piece.h"
#include "core/store/interchange/svg_writer.h"
#include "core/tracing/line_kind.h"

namespace coutil {

namespace {

using interchange::Piece;
using interchange::SvgWriter;

constexpr double kPageMarginMm = 10;
constexpr double kTitleHeightMm = 5;
constexpr double kNameHeightMm = 8;
constexpr double kMarkArmMm = 2;

// Garment, client when she may be named, revision, date.
std::string titleLine(const TracingTitle& title) {
    std::string line;
    for (const std::string& part : {title.garment, title.client, title.revision, title.date}) {
        if (part.empty()) continue;
        line += (line.empty() ? "" : ", ") + part;
    }
    return line;
}

// All pieces, a margin, and a strip for the title underneath.
Box pageAround(const std::vector<Piece>& pieces) {
    Box box;
    for (const Piece& piece : pieces) {
        box.include(boundsOf(placed(interchange::outermostLine(piece), piece.placement)));
    }
    if (box.isEmpty()) box.include(Point::Zero());
    box.lowest -= Vector(kPageMarginMm, kPageMarginMm + 2 * kTitleHeightMm);
    box.highest += Vector(kPageMarginMm, kPageMarginMm);
    return box;
}

void beginKind(SvgWriter& svg, const std::string& id, LineKind kind) {
    svg.beginGroup(id + "-" + std::string(keyOf(kind)));
}

void drawLevels(SvgWriter& svg, const Piece& piece, const std::string& id) {
    if (piece.levels.empty()) return;
    beginKind(svg, id, LineKind::levels);
    for (const LevelLine& level : piece.levels) {
        svg.beginGroup(id + "-level-" + level.level, level.level);
        svg.line("level", placed(level.front, piece.placement),
                 placed(level.back, piece.placement));
        svg.endGroup();
    }
    svg.endGroup();
}

void drawSewing(SvgWriter& svg, const Piece& piece, const std::string& id) {
    beginKind(svg, id, LineKind::sewing);
    for (const Edge& edge : piece.sewing) {
        svg.beginGroup(id + "-" + edge.name, edge.name);
        svg.path(piece.cutting ? "sewing inner" : "sewing", placed(edge.path, piece.placement),
                 false);
        svg.endGroup();
    }
    svg.endGroup();
}

void drawNotches(SvgWriter& svg, const Piece& piece, const std::string& id) {
    if (piece.notches.empty() && piece.waistMarks.empty()) return;
    beginKind(svg, id, LineKind::notches);
    for (const Notch& notch : piece.notches) {
        svg.line("notch", placed(notch.at, piece.placement),
                 placed(Point(notch.at + notch.outward * notch.lengthMm), piece.placement));
    }
    for (const Point& mark : piece.waistMarks) {
        svg.cross("mark", placed(mark, piece.placement), kMarkArmMm);
    }
    svg.endGroup();
}

void drawPiece(SvgWriter& svg, const Piece& piece) {
    const std::string id = "panel-" + piece.name;
    svg.beginPanel(id, piece.name, placed(Point(Point::Zero()), piece.placement));
    if (piece.cutting) {
        beginKind(svg, id, LineKind::cutting);
        svg.path("cutting", placed(*piece.cutting, piece.placement), true);
        svg.endGroup();
    }
    drawSewing(svg, piece, id);
    drawLevels(svg, piece, id);
    drawNotches(svg, piece, id);
    beginKind(svg, id, LineKind::grain);
    svg.line("grain", placed(piece.grain[0], piece.placement),
             placed(piece.grain[1], piece.placement));
    svg.endGroup();
    if (piece.foldLine) {
        beginKind(svg, id, LineKind::fold);
        svg.path("fold", placed(*piece.foldLine, piece.placement), false);
        svg.endGroup();
    }
    beginKind(svg, id, LineKind::labels);
    svg.text(piece.name, placed(piece.labelAt, piece.placement), kNameHeightMm);
    svg.endGroup();
    svg.endGroup();
}

std::string drawn(const std::vector<Piece>& pieces, const TracingTitle& title) {
    const Box page = pageAround(pieces);
    const std::string line = titleLine(title);
    SvgWriter svg(page, line);
    for (const Piece& piece : pieces) drawPiece(svg, piece);
    svg.text(line, page.lowest + Vector(kPageMarginMm, kPageMarginMm), kTitleHeightMm);
    return svg.finished();
}

}  // namespace

std::string writePatternSvg(const Pattern& pattern, const TracingTitle& title) {
    return drawn(interchange::piecesOf(pattern), title);
}

std::string writeTracingsSvg(const std::vector<Tracing>& tracings, const TracingTitle& title) {
    return drawn(interchange::piecesOf(tracings), title);
}

}  // namespace coutil
