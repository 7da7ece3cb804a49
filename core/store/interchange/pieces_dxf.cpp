#include <string>

#include "core/geometry/tolerances.h"
#include "core/store/interchange.h"
#include "core/store/interchange/corner_stretches.h"
#include "core/store/interchange/dxf_writer.h"
#include "core/store/interchange/piece.h"
#include "core/store/interchange/seven_bit_text.h"

namespace coutil {

namespace {

using interchange::DxfLayer;
using interchange::DxfWriter;
using interchange::Piece;

constexpr double kTextHeightMm = 6;

// The corner-to-corner stretches of a closed line as chains of chords. Every end of a stretch is a
// turn point, everything between a curve point; straight stretches have none.
struct Boundary {
    std::vector<Point> points;  // the first is not repeated at the end
    std::vector<Point> turns;
    std::vector<Point> curvePoints;
};

void addStretch(Boundary& boundary, const Path& stretch) {
    const auto points = flattened(stretch, tolerance::kExchangeChordMm);
    boundary.turns.push_back(points.front());
    boundary.points.push_back(points.front());
    for (std::size_t i = 1; i + 1 < points.size(); ++i) {
        boundary.points.push_back(points[i]);
        boundary.curvePoints.push_back(points[i]);
    }
}

Boundary boundaryOf(const std::vector<Edge>& edges) {
    Boundary boundary;
    for (const Edge& edge : edges) addStretch(boundary, edge.path);
    return boundary;
}

// A cutting line does not say where its corners are: they are where its pieces meet at an angle.
Boundary boundaryOf(const Path& closed) {
    Boundary boundary;
    for (const Path& stretch : interchange::cornerStretches(closed)) addStretch(boundary, stretch);
    return boundary;
}

void drawBoundary(DxfWriter& dxf, const Boundary& boundary) {
    dxf.polyline(DxfLayer::boundary, boundary.points, true);
    for (const Point& turn : boundary.turns) dxf.point(DxfLayer::turnPoints, turn);
    for (const Point& point : boundary.curvePoints) dxf.point(DxfLayer::curvePoints, point);
}

void drawTexts(DxfWriter& dxf, const Piece& piece, const TracingTitle& title) {
    Point at = piece.labelAt;
    const auto next = [&](const std::string& text, DxfLayer layer) {
        dxf.text(layer, text, at, kTextHeightMm);
        at -= Vector(0, 1.5 * kTextHeightMm);
    };
    next("Piece Name: " + piece.name, DxfLayer::boundary);
    next("Size: " + title.garment, DxfLayer::boundary);
    // Pieces as drawn, and pieces turned over.
    const int turned = piece.isMirroredPair ? piece.cutCount / 2 : 0;
    next("Quantity: " + std::to_string(piece.cutCount - turned) + "," + std::to_string(turned),
         DxfLayer::boundary);
    next("Category: " + title.revision + " " + title.date, DxfLayer::boundary);
    next(piece.cutting ? "Annotation: cutting line with allowance"
                       : "Annotation: sewing line, no allowance",
         DxfLayer::boundary);
    next(piece.name, DxfLayer::annotation);
}

void drawPiece(DxfWriter& dxf, const Piece& piece, const TracingTitle& title,
               const std::string& block) {
    dxf.beginBlock(block);
    const bool hasAllowance = piece.cutting && !piece.cutting->isEmpty();
    const Boundary sewing = boundaryOf(piece.sewing);
    drawBoundary(dxf, hasAllowance ? boundaryOf(*piece.cutting) : sewing);
    if (hasAllowance) dxf.polyline(DxfLayer::sewingLines, sewing.points, true);
    for (const Notch& notch : piece.notches) {
        dxf.point(DxfLayer::notches, notch.at + notch.outward * notch.lengthMm);
    }
    for (const Point& mark : piece.waistMarks) dxf.point(DxfLayer::notches, mark);
    for (const interchange::PieceHole& hole : piece.holes) {
        dxf.point(DxfLayer::drillHoles, hole.at);
    }
    if (piece.foldLine) {
        dxf.line(DxfLayer::mirrorLine, piece.foldLine->start(), piece.foldLine->end());
    }
    dxf.line(DxfLayer::grainLine, piece.grain[0], piece.grain[1]);
    for (const LevelLine& level : piece.levels) {
        dxf.line(DxfLayer::internalLines, level.front, level.back);
    }
    drawTexts(dxf, piece, title);
    dxf.endBlock();
}

std::string blockOf(const Piece& piece, std::size_t index) {
    // The index keeps names apart that look alike once they are 7-bit capitals.
    std::string name(1, 'P');
    name += std::to_string(index + 1);
    name += '_';
    name += piece.name;
    return interchange::blockName(name);
}

std::string drawn(const std::vector<Piece>& pieces, const TracingTitle& title) {
    DxfWriter dxf;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        drawPiece(dxf, pieces[i], title, blockOf(pieces[i], i));
    }
    dxf.endBlocks();
    Point at(0, -40);
    const auto style = [&](const std::string& text) {
        dxf.text(DxfLayer::boundary, text, at, kTextHeightMm);
        at -= Vector(0, 1.5 * kTextHeightMm);
    };
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        // D6673 knows no turned inserts here: pieces keep their upright grain, only shifted.
        dxf.insert(blockOf(pieces[i], i), placed(Point(Point::Zero()), pieces[i].placement));
    }
    style("Style Name: " + title.garment + (title.client.empty() ? "" : ", " + title.client));
    style("Creation Date: " + title.date);
    style("Units: METRIC");
    return dxf.finished();
}

}  // namespace

std::string writePatternDxf(const Pattern& pattern, const TracingTitle& title) {
    return drawn(interchange::piecesOf(pattern), title);
}

std::string writeTracingsDxf(const std::vector<Tracing>& tracings, const TracingTitle& title) {
    return drawn(interchange::piecesOf(tracings), title);
}

}  // namespace coutil
