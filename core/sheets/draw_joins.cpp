#include "core/sheets/draw_joins.h"

#include <algorithm>
#include <cmath>

#include "core/sheets/free_room.h"
#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

constexpr double kMarkMm = 4.5;  // half the diamond's width
constexpr double kCrossMm = 4;   // an arm of a cross
constexpr double kNumberMm = 1.9;
constexpr double kNameMm = 2.6;
constexpr double kLineMm = 0.15;
constexpr double kFromEndMm = 8;    // marks keep this far from a join's ends
constexpr double kClearMm = 0.6;    // around a mark and a name
constexpr double kOffLineMm = 0.5;  // from the join to a name

bool isKept(const SheetPlan& plan, const Sheet& sheet) {
    return std::find(plan.sheets.begin(), plan.sheets.end(), sheet) != plan.sheets.end();
}

Join joinBetween(const SheetPlan& plan, const Sheet& first, const Sheet& second, bool isUpright) {
    const Box box = frameOf(plan, second);
    Join join;
    join.first = first;
    join.second = second;
    join.isUpright = isUpright;
    // The line is the second sheet's own frame: its left side, or its top.
    if (isUpright) {
        join.from = {box.lowest.x(), box.highest.y()};
        join.to = box.lowest;
    } else {
        join.from = {box.lowest.x(), box.highest.y()};
        join.to = box.highest;
    }
    return join;
}

// Everything drawn near a join, to find room in stretches along it.
class AlongJoin {
  public:
    AlongJoin(const Join& join, const std::vector<SheetStroke>& lines,
              const std::vector<Box>& lineBoxes, const std::vector<Box>& wordBoxes)
        : join_(join) {
        Box reach;
        reach.include(join.from);
        reach.include(join.to);
        reach = {reach.lowest - Vector::Constant(kReachMm),
                 reach.highest + Vector::Constant(kReachMm)};
        for (std::size_t i = 0; i < lines.size(); ++i) {
            if (boxesMeet(lineBoxes[i], reach)) lines_.push_back(&lines[i]);
        }
        for (const Box& box : wordBoxes) {
            if (boxesMeet(box, reach)) words_.push_back(box);
        }
    }

    // Of the stretch between two distances across the join (y up or x right counted positive), the
    // best room nearest to `wanted`.
    [[nodiscard]] FreeRoom::Place roomIn(double low, double high, const Vector& size,
                                         const Point& wanted) const {
        Box stretch;
        stretch.include(join_.from);
        stretch.include(join_.to);
        const Vector across = join_.isUpright ? Vector(1, 0) : Vector(0, 1);
        const Vector along = join_.isUpright ? Vector(0, 1) : Vector(1, 0);
        stretch.lowest += low * across + kFromEndMm * along;
        stretch.highest += high * across - kFromEndMm * along;
        FreeRoom room(stretch);
        for (const SheetStroke* line : lines_) room.take(*line);
        for (const Box& box : words_) room.take(box);
        const Vector whole = size + Vector::Constant(2 * kClearMm);
        return room.placeFor(whole.x(), whole.y(), wanted);
    }

    // The middle of a room of that size on one sheet's side, beside the join if there is one, else
    // farther in. Across an upright join the first sheet lies to the left, across a level one
    // above.
    [[nodiscard]] Point middleOnSide(bool isFirst, const Vector& size, const Point& wanted) const {
        const double leastMm =
            (join_.isUpright ? size.x() : size.y()) + 2 * kClearMm + FreeRoom::kCellMm;
        const bool isPositive = join_.isUpright != isFirst;
        FreeRoom::Place best;
        for (const double moreMm : {0.0, 8.0, 20.0}) {
            const double far = kOffLineMm + leastMm + moreMm;
            best = isPositive ? roomIn(kOffLineMm, far, size, wanted)
                              : roomIn(-far, -kOffLineMm, size, wanted);
            if (best.isFree()) break;
        }
        return best.corner + size / 2 + Vector::Constant(kClearMm);
    }
    void take(const Box& box) { words_.push_back(box); }

  private:
    static constexpr double kReachMm = 20;
    const Join& join_;
    std::vector<const SheetStroke*> lines_;
    std::vector<Box> words_;
};

Box boxAround(const Point& middle, const Vector& size) {
    return {middle - size / 2, middle + size / 2};
}

// Towards one sheet's own half.
Vector towards(const Join& join, bool isFirst) {
    return join.isUpright ? Vector(isFirst ? -1 : 1, 0) : Vector(0, isFirst ? 1 : -1);
}

// The mark on the join, numbers in its halves if all of it finds room; else the mark where it is in
// the way least and the numbers beside it. Names near it.
void placeMarkAndWords(Join& join, AlongJoin& along) {
    constexpr double kHalfMm = kMarkMm + kClearMm + FreeRoom::kCellMm;  // whole cells, rounded up
    const Vector diamond = Vector::Constant(2 * kMarkMm);
    const FreeRoom::Place place =
        along.roomIn(-kHalfMm, kHalfMm, diamond, (join.from + join.to) / 2);
    join.mark = place.corner + Vector::Constant(kClearMm) + diamond / 2;
    if (join.isUpright) join.mark.x() = join.from.x();
    if (!join.isUpright) join.mark.y() = join.from.y();
    if (place.isFree()) along.take(boxAround(join.mark, diamond));
    const std::string number = std::to_string(join.number);
    for (const bool isFirst : {true, false}) {
        Join::Words& words = isFirst ? join.onFirst : join.onSecond;
        words.number = join.mark + 0.36 * kMarkMm * towards(join, isFirst);
        if (!place.isFree()) {
            const Vector size(aboutWidthMm(number, kNumberMm), kNumberMm);
            words.number = along.middleOnSide(isFirst, size, words.number);
            along.take(boxAround(words.number, size));
        }
        const std::string name = nameOf(isFirst ? join.second : join.first);
        const Vector size(aboutWidthMm(name, kNameMm), kNameMm);
        words.name = along.middleOnSide(isFirst, size, join.mark);
        along.take(boxAround(words.name, size));
    }
}

SheetStroke fine(const std::vector<Point>& points, SheetDash dash = SheetDash::solid) {
    return {polylinePath(points), kLineMm, dash, SheetInk::mark};
}

void addCross(const Point& at, std::vector<SheetStroke>& strokes) {
    strokes.push_back(fine({at - Vector(kCrossMm, 0), at + Vector(kCrossMm, 0)}));
    strokes.push_back(fine({at - Vector(0, kCrossMm), at + Vector(0, kCrossMm)}));
}

SheetLettering lettering(const std::string& text, const Point& middle, double heightMm) {
    return {text,           middle - Vector(0, heightMm / 2), heightMm, 0, TextAnchor::centre,
            SheetInk::mark, aboutWidthMm(text, heightMm)};
}

}  // namespace

std::vector<Join> joinsOf(const SheetPlan& plan, const std::vector<SheetStroke>& lines,
                          const std::vector<SheetLettering>& words) {
    std::vector<Box> lineBoxes;
    lineBoxes.reserve(lines.size());
    for (const auto& line : lines) lineBoxes.push_back(boundsOf(line.path));
    std::vector<Box> wordBoxes;
    wordBoxes.reserve(words.size());
    for (const auto& word : words) wordBoxes.push_back(aboutBox(word));
    std::vector<Join> joins;
    for (const Sheet& sheet : plan.sheets) {
        const Sheet right{sheet.row, sheet.column + 1};
        const Sheet below{sheet.row + 1, sheet.column};
        if (isKept(plan, right)) joins.push_back(joinBetween(plan, sheet, right, true));
        if (isKept(plan, below)) joins.push_back(joinBetween(plan, sheet, below, false));
    }
    for (std::size_t i = 0; i < joins.size(); ++i) {
        joins[i].number = static_cast<int>(i) + 1;
        AlongJoin along(joins[i], lines, lineBoxes, wordBoxes);
        placeMarkAndWords(joins[i], along);
    }
    return joins;
}

void drawJoin(const Join& join, const Sheet& sheet, std::vector<SheetStroke>& strokes,
              std::vector<SheetLettering>& letterings) {
    const bool isFirst = sheet == join.first;
    if (!isFirst && !(sheet == join.second)) return;
    // The second sheet is cut on the line (solid), the first is covered up to it (dashed).
    strokes.push_back(fine({join.from, join.to}, isFirst ? SheetDash::dashed : SheetDash::solid));
    addCross(join.from, strokes);
    addCross(join.to, strokes);
    // Across the join, towards this sheet's own half.
    const Vector along = (join.to - join.from).normalized();
    const Vector across = towards(join, isFirst);
    strokes.push_back(fine(
        {join.mark + kMarkMm * along, join.mark + kMarkMm * across, join.mark - kMarkMm * along}));
    const std::string number = std::to_string(join.number);
    const std::string name = nameOf(isFirst ? join.second : join.first);
    const Join::Words& words = isFirst ? join.onFirst : join.onSecond;
    letterings.push_back(lettering(number, words.number, kNumberMm));
    letterings.back().roomMm = std::min(kMarkMm, letterings.back().roomMm);
    letterings.push_back(lettering(name, words.name, kNameMm));
}

}  // namespace coutil
