#include "core/sheets/sheet_map.h"

#include <algorithm>

#include "core/sheets/free_room.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

constexpr double kChordMm = 0.5;  // on the drawing; the map is many times smaller
constexpr double kTallestNameMm = 4;

// Drawing to map.
struct MapScale {
    double scale = 1;
    Point origin = Point::Zero();  // of the drawing, on the paper

    [[nodiscard]] Point at(const Point& drawingMm) const { return origin + scale * drawingMm; }
};

Path boxPath(const Box& box) {
    const Point& a = box.lowest;
    const Point& b = box.highest;
    return polylinePath({a, {b.x(), a.y()}, b, {a.x(), b.y()}, a});
}

MapScale scaleFor(const SheetPlan& plan, const Box& room) {
    const Box whole{frameOf(plan, {plan.rows - 1, 0}).lowest,
                    frameOf(plan, {0, plan.columns - 1}).highest};
    MapScale map;
    map.scale =
        std::min({room.widthMm() / whole.widthMm(), room.heightMm() / whole.heightMm(), 0.3});
    map.origin = Point(room.lowest.x(), room.highest.y() - map.scale * whole.heightMm());
    return map;
}

void drawPieces(const SheetPlan& plan, const std::vector<Tracing>& tracings, const MapScale& map,
                double numberMm, SheetDrawing& drawing) {
    for (const auto& piece : plan.placed) {
        const Tracing& tracing = tracings[piece.tracing];
        std::vector<Point> points = flattened(placed(tracing.cutting, piece.placement), kChordMm);
        for (Point& p : points) p = map.at(p);
        drawing.strokes.push_back(
            {polylinePath(points), 0.15, SheetDash::solid, SheetInk::cutting});
        const Point at = map.at(placed(tracing.labelAt, piece.placement));
        drawing.letterings.push_back({tracing.panel, at - Vector(0, numberMm / 2), numberMm, 0,
                                      TextAnchor::centre, SheetInk::text, 0});
    }
}

}  // namespace

void drawSheetMap(const SheetPlan& plan, const std::vector<Tracing>& tracings, const Box& room,
                  SheetDrawing& drawing) {
    if (plan.sheets.empty() || room.widthMm() <= 0 || room.heightMm() <= 0) return;
    const MapScale map = scaleFor(plan, room);
    const double stepMm =
        map.scale * static_cast<double>(std::min(plan.stepXUm, plan.stepYUm)) / 1000;
    const std::size_t firstStroke = drawing.strokes.size();
    const std::size_t firstLettering = drawing.letterings.size();
    drawPieces(plan, tracings, map, std::clamp(0.14 * stepMm, 1.2, 3.0), drawing);
    const std::vector<SheetStroke> pieces(
        drawing.strokes.begin() + static_cast<std::ptrdiff_t>(firstStroke), drawing.strokes.end());
    const std::vector<SheetLettering> numbers(
        drawing.letterings.begin() + static_cast<std::ptrdiff_t>(firstLettering),
        drawing.letterings.end());
    for (const Sheet& sheet : plan.sheets) {
        const Box frame = frameOf(plan, sheet);
        const Box box{map.at(frame.lowest), map.at(frame.highest)};
        drawing.strokes.push_back({boxPath(box), 0.12, SheetDash::solid, SheetInk::frame});
        const double nameMm = std::clamp(0.2 * stepMm, 1.2, kTallestNameMm);
        FreeRoom free(box);
        for (const auto& stroke : pieces) free.take(stroke);
        for (const auto& number : numbers) free.take(aboutBox(number));
        const std::string name = nameOf(sheet);
        const double width = aboutWidthMm(name, nameMm);
        const Point at =
            free.placeFor(width + 1, nameMm + 1, {box.lowest.x(), box.highest.y()}).corner;
        drawing.letterings.push_back({name, at + Vector(0.5 + width / 2, 0.5), nameMm, 0,
                                      TextAnchor::centre, SheetInk::mark, width});
    }
}

}  // namespace coutil
