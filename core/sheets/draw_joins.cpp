#include "core/sheets/draw_joins.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

constexpr double kMarkMm = 4.5;  // half the diamond's width
constexpr double kCrossMm = 4;   // an arm of a cross
constexpr double kNumberMm = 1.9;
constexpr double kNameMm = 2.6;
constexpr double kLineMm = 0.15;
constexpr std::array kMarkPlaces{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9};

bool isKept(const SheetPlan& plan, const Sheet& sheet) {
    return std::find(plan.sheets.begin(), plan.sheets.end(), sheet) != plan.sheets.end();
}

int linesIn(const std::vector<std::vector<Point>>& lines, const Box& box) {
    int count = 0;
    for (const auto& points : lines) {
        for (std::size_t i = 0; i + 1 < points.size(); ++i) {
            count += segmentMeets(points[i], points[i + 1], box) ? 1 : 0;
        }
    }
    return count;
}

// The marks with their names reach about this far along and across the join.
Box reachOf(const Join& join, const Point& mark) {
    const Vector reach = join.isUpright ? Vector(kMarkMm + 7, kMarkMm + kNameMm + 3)
                                        : Vector(kMarkMm + 9, kMarkMm + 1);
    return {mark - reach, mark + reach};
}

Join joinBetween(const SheetPlan& plan, const Sheet& first, const Sheet& second, bool isUpright) {
    const Box box = frameOf(plan, second);
    Join join{0, first, second, isUpright, box.lowest, box.lowest, {}};
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

void placeMark(Join& join, const std::vector<std::vector<Point>>& lines) {
    int least = -1;
    for (const double part : kMarkPlaces) {
        const Point at = join.from + part * (join.to - join.from);
        const int crossed = linesIn(lines, reachOf(join, at));
        if (least >= 0 && crossed >= least) continue;
        least = crossed;
        join.mark = at;
    }
}

SheetStroke fine(const std::vector<Point>& points, SheetDash dash = SheetDash::solid) {
    return {polylinePath(points), kLineMm, dash, SheetInk::mark};
}

void addCross(const Point& at, std::vector<SheetStroke>& strokes) {
    strokes.push_back(fine({at - Vector(kCrossMm, 0), at + Vector(kCrossMm, 0)}));
    strokes.push_back(fine({at - Vector(0, kCrossMm), at + Vector(0, kCrossMm)}));
}

SheetLettering lettering(const std::string& text, const Point& at, double heightMm,
                         TextAnchor anchor) {
    return {text, at, heightMm, 0, anchor, SheetInk::mark, 0};
}

}  // namespace

std::vector<Join> joinsOf(const SheetPlan& plan, const std::vector<SheetStroke>& lines) {
    std::vector<std::vector<Point>> chains;
    chains.reserve(lines.size());
    for (const auto& line : lines) chains.push_back(flattened(line.path, 0.3));
    std::vector<Join> joins;
    for (const Sheet& sheet : plan.sheets) {
        const Sheet right{sheet.row, sheet.column + 1};
        const Sheet below{sheet.row + 1, sheet.column};
        if (isKept(plan, right)) joins.push_back(joinBetween(plan, sheet, right, true));
        if (isKept(plan, below)) joins.push_back(joinBetween(plan, sheet, below, false));
    }
    for (std::size_t i = 0; i < joins.size(); ++i) {
        joins[i].number = static_cast<int>(i) + 1;
        std::vector<std::vector<Point>> near;
        Box box;
        box.include(joins[i].from);
        box.include(joins[i].to);
        box = {box.lowest - Vector::Constant(20), box.highest + Vector::Constant(20)};
        for (const auto& chain : chains) {
            if (meets(shapeOf(chain), box)) near.push_back(chain);
        }
        placeMark(joins[i], near);
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
    const Vector across =
        join.isUpright ? Vector(isFirst ? -1 : 1, 0) : Vector(0, isFirst ? 1 : -1);
    strokes.push_back(fine(
        {join.mark + kMarkMm * along, join.mark + kMarkMm * across, join.mark - kMarkMm * along}));
    const std::string number = std::to_string(join.number);
    const std::string name = nameOf(isFirst ? join.second : join.first);
    const Vector down(0, -kNumberMm / 2);
    letterings.push_back(lettering(number, join.mark + 0.36 * kMarkMm * across + down, kNumberMm,
                                   TextAnchor::centre));
    letterings.back().roomMm = kMarkMm;
    if (join.isUpright) {
        const Point at = join.mark + 1.5 * across + Vector(0, kMarkMm + 1.2);
        letterings.push_back(
            lettering(name, at, kNameMm, isFirst ? TextAnchor::right : TextAnchor::left));
    } else {
        const Point at =
            join.mark + Vector(kMarkMm + 1.5, 0) + 0.6 * kMarkMm * across - Vector(0, kNameMm / 2);
        letterings.push_back(lettering(name, at, kNameMm, TextAnchor::left));
    }
}

}  // namespace coutil
