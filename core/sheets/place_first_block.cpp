#include "core/sheets/place_first_block.h"

#include <algorithm>
#include <array>

#include "core/geometry/tolerances.h"
#include "core/sheets/free_room.h"

namespace coutil {
namespace {

// What an A4 page shows inside margins of 10 mm.
constexpr double kShortSideMm = 190;
constexpr double kLongSideMm = 277;
// A sheet of at least so many blocks is large: A1, A0, rolls; A2 and smaller are not.
constexpr double kLargeSheetBlocks = 7;
constexpr double kClearMm = 5;

double mm(long long um) { return static_cast<double>(um) / 1000; }

double topOf(const std::vector<OutlineShape>& shapes) {
    double top = 0;
    for (const auto& shape : shapes) top = std::max(top, shape.box.highest.y());
    return top;
}

// Inside the frame, and off the stretches that neighbouring sheets show too.
Box roomOn(const SheetPlan& plan, const Sheet& sheet) {
    Box room = frameOf(plan, sheet);
    if (plan.sheets.size() == 1) return room;
    const Vector shared(mm(plan.frameXUm - plan.stepXUm), mm(plan.frameYUm - plan.stepYUm));
    const Vector inset = shared + Vector::Constant(kClearMm);
    return {room.lowest + inset, room.highest - inset};
}

std::optional<Box> placeIn(const std::vector<OutlineShape>& shapes, const Box& room,
                           const Vector& size, const Point& wanted) {
    FreeRoom free(room);
    for (const auto& shape : shapes) {
        if (!boxesMeet(shape.box, room)) continue;
        std::vector<Point> ring = shape.points;
        ring.push_back(ring.front());
        SheetStroke outline;
        outline.path = polylinePath(ring);
        free.take(outline);
        free.coverBy(shape);
    }
    const Vector whole = size + Vector::Constant(2 * kClearMm);
    const auto place = free.placeFor(whole.x(), whole.y(), wanted);
    if (!place.isOffPieces()) return std::nullopt;
    const Point corner = place.corner + Vector::Constant(kClearMm);
    return Box{corner, corner + size};
}

// First inside the length that the pieces need anyway, else above them.
std::optional<Box> placeOnRoll(const std::vector<OutlineShape>& shapes, const SheetPlan& plan,
                               const std::array<Vector, 2>& sizes) {
    const Box frame = frameOf(plan, plan.sheets.front());
    const double top = topOf(shapes);
    for (const double more : {0.0, kShortSideMm + 4 * kClearMm, kLongSideMm + 4 * kClearMm}) {
        Box room = frame;
        room.highest.y() = std::min(frame.highest.y(), top + more);
        for (const Vector& size : sizes) {
            if (auto box = placeIn(shapes, room, size, room.lowest)) return box;
        }
    }
    return std::nullopt;
}

}  // namespace

void placeFirstBlock(const std::vector<OutlineShape>& shapes, SheetPlan& plan) {
    const Vector frame(mm(plan.frameXUm), mm(plan.frameYUm));
    const bool isLarge = frame.x() * frame.y() >= kLargeSheetBlocks * kShortSideMm * kLongSideMm;
    if (!isLarge || plan.sheets.empty()) return;
    const Correction factor = correctionOf(plan);
    const std::array<Vector, 2> sizes{Vector(kLongSideMm / factor.x, kShortSideMm / factor.y),
                                      Vector(kShortSideMm / factor.x, kLongSideMm / factor.y)};
    if (plan.options.paper.isRoll && plan.sheets.size() == 1) {
        if (const auto box = placeOnRoll(shapes, plan, sizes)) plan.firstBlock = {0, *box};
        return;
    }
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        const Box room = roomOn(plan, plan.sheets[i]);
        for (const Vector& size : sizes) {
            const Point upperLeft(room.lowest.x(), room.highest.y());
            if (const auto box = placeIn(shapes, room, size, upperLeft)) {
                plan.firstBlock = {i, *box};
                return;
            }
        }
    }
}

}  // namespace coutil
