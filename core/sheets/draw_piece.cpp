#include "core/sheets/draw_piece.h"

#include <cmath>

#include "core/sheets/piece_label.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

// Widths in mm as the trade draws them (cutting finer than sewing); the rest common practice.
constexpr double kCuttingMm = 0.35;
constexpr double kSewingMm = 0.5;
constexpr double kFineMm = 0.2;
constexpr double kHairlineMm = 0.1;
constexpr double kArrowMm = 4;
constexpr double kLeastNotchMm = 3;
constexpr double kLevelNameMm = 1.6;

struct Pen {
    LineKind kind;
    SheetInk ink;
    double widthMm;
    SheetDash dash = SheetDash::solid;
};

class PieceLines {
  public:
    PieceLines(const Tracing& tracing, const Placement& placement)
        : tracing_(tracing), placement_(placement) {}

    std::vector<SheetStroke> all() {
        drawLevels();
        drawGrain();
        add(tracing_.cutting, {LineKind::cutting, SheetInk::cutting, kCuttingMm});
        for (const Edge& edge : tracing_.sewing) {
            const bool isFold = edge.role == EdgeRole::fold;
            add(edge.path, {isFold ? LineKind::fold : LineKind::sewing, SheetInk::sewing, kSewingMm,
                            isFold ? SheetDash::dashed : SheetDash::solid});
        }
        for (const Notch& notch : tracing_.notches) drawNotch(notch);
        return std::move(strokes_);
    }

  private:
    void add(const Path& path, const Pen& pen) {
        if (path.isEmpty()) return;
        strokes_.push_back({placed(path, placement_), pen.widthMm, pen.dash, pen.ink});
        strokes_.back().kind = pen.kind;
    }
    void add(const Point& a, const Point& b, const Pen& pen) { add(straightPath(a, b), pen); }

    void drawLevels() {
        for (const LevelLine& level : tracing_.levels) {
            add(level.front, level.back, {LineKind::levels, SheetInk::level, kHairlineMm});
        }
    }

    void drawArrow(const Point& tip, const Vector& along) {
        const Vector across(-along.y(), along.x());
        for (const double side : {1.0, -1.0}) {
            add(tip, tip - kArrowMm * along + side * kArrowMm / 3 * across,
                {LineKind::grain, SheetInk::grain, kFineMm});
        }
    }

    void drawGrain() {
        const auto& [low, high] = tracing_.grain;
        const double length = (high - low).norm();
        if (length <= 0) return;
        const Vector along = (high - low) / length;
        add(low, high, {LineKind::grain, SheetInk::grain, kFineMm});
        drawArrow(high, along);
        drawArrow(low, -along);
    }

    // Where there is no allowance the tick goes inwards, so that a snip never leaves the piece. A
    // balance notch is a pair, so that it can't be taken for the one at the waist.
    void drawNotch(const Notch& notch) {
        const bool isBound = notch.lengthMm < kLeastNotchMm;
        const Vector tick = notch.outward * (isBound ? -kLeastNotchMm : notch.lengthMm);
        const Vector along(-notch.outward.y(), notch.outward.x());
        const double apart = notch.kind == NotchKind::balance ? 1.5 : 0;
        const Pen pen{LineKind::notches, SheetInk::notch, kFineMm};
        add(notch.at + apart * along, notch.at + apart * along + tick, pen);
        if (apart > 0) add(notch.at - apart * along, notch.at - apart * along + tick, pen);
    }

    const Tracing& tracing_;
    const Placement& placement_;
    std::vector<SheetStroke> strokes_;
};

// The level's name above its front end, running along the line, upside up.
SheetLettering levelName(const LevelLine& level, const Placement& placement,
                         const SheetWords& words) {
    Point from = placed(level.front, placement);
    Point to = placed(level.back, placement);
    // Read from the left, or from below where the line stands upright.
    const Vector d = to - from;
    if (d.x() < -1e-9 * d.norm() || (std::abs(d.x()) <= 1e-9 * d.norm() && d.y() < 0)) {
        std::swap(from, to);
    }
    const Vector along = (to - from).normalized();
    const Vector up(-along.y(), along.x());
    const auto known = words.levels.find(level.level);
    SheetLettering name;
    name.text = known == words.levels.end() ? level.level : known->second;
    name.heightMm = kLevelNameMm;
    name.at = from + 4 * along + 0.7 * up;
    name.turnRad = std::atan2(along.y(), along.x());
    name.ink = SheetInk::level;
    name.kind = LineKind::levels;
    name.roomMm = std::max(4.0, (to - from).norm() / 2 - 6);
    return name;
}

}  // namespace

PieceDrawing drawPiece(const SheetPlan& plan, const PlacedTracing& piece, const Tracing& tracing,
                       const SheetWords& words) {
    PieceDrawing drawing;
    drawing.strokes = PieceLines(tracing, piece.placement).all();
    drawing.letterings = labelOf(plan, piece, tracing, words, drawing.strokes);
    for (SheetLettering& lettering : drawing.letterings) lettering.kind = LineKind::labels;
    for (const LevelLine& level : tracing.levels) {
        if (level.front == level.back) continue;
        drawing.letterings.push_back(levelName(level, piece.placement, words));
    }
    return drawing;
}

}  // namespace coutil
