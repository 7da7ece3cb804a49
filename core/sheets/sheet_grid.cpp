#include "core/sheets/sheet_grid.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

double mm(long long um) { return static_cast<double>(um) / 1000; }

// One axis of the grid is cut into zones: even ones are shown by one sheet only, odd ones lie in
// the overlap of two. Zone 2k belongs to sheet k, zone 2k - 1 to sheets k - 1 and k.
struct Axis {
    long long stepUm;
    long long overlapUm;
    int sheets;

    [[nodiscard]] int zones() const { return 2 * sheets - 1; }
    [[nodiscard]] double start(int zone) const {
        if (zone == 0) return 0;
        const int sheet = (zone + 1) / 2;
        return mm(sheet * stepUm + (zone % 2 == 0 ? overlapUm : 0));
    }
    [[nodiscard]] double end(int zone) const {
        return zone + 1 == zones() ? mm(sheets * stepUm + overlapUm) : start(zone + 1);
    }
};

Axis axisFor(long long stepUm, long long overlapUm, double farthestMm) {
    Axis axis{stepUm, overlapUm, 1};
    while (mm(axis.sheets * stepUm + overlapUm) < farthestMm) ++axis.sheets;
    return axis;
}

struct Zones {
    Axis x;
    Axis y;
    std::vector<char> touched;

    [[nodiscard]] std::size_t indexOf(int zoneX, int zoneY) const {
        return static_cast<std::size_t>(zoneY) * static_cast<std::size_t>(x.zones()) +
               static_cast<std::size_t>(zoneX);
    }
    [[nodiscard]] char& at(int zoneX, int zoneY) { return touched[indexOf(zoneX, zoneY)]; }
};

// Marks every zone that holds a part of the shape no other sheet can be spared for.
void touch(const OutlineShape& shape, Zones& zones) {
    const double pen = tolerance::kHalfPenMm;
    for (int j = 0; j < zones.y.zones(); ++j) {
        if (zones.y.start(j) - pen > shape.box.highest.y()) break;
        if (zones.y.end(j) + pen < shape.box.lowest.y()) continue;
        for (int i = 0; i < zones.x.zones(); ++i) {
            const Box box{Point(zones.x.start(i) - pen, zones.y.start(j) - pen),
                          Point(zones.x.end(i) + pen, zones.y.end(j) + pen)};
            if (zones.at(i, j) == 0 && meets(shape, box)) zones.at(i, j) = 1;
        }
    }
}

// Takes away the zones a sheet shows and returns how many there were.
int claim(Zones& zones, int column, int row, bool really) {
    int claimed = 0;
    for (int j = std::max(0, 2 * row - 1); j <= std::min(zones.y.zones() - 1, 2 * row + 1); ++j) {
        for (int i = std::max(0, 2 * column - 1);
             i <= std::min(zones.x.zones() - 1, 2 * column + 1); ++i) {
            claimed += zones.at(i, j);
            if (really) zones.at(i, j) = 0;
        }
    }
    return claimed;
}

// Sheets as (column, row from below): first those that alone show something, then, for what is
// left in overlaps, the sheet that shows most of it.
std::vector<Sheet> coverOf(Zones zones) {
    std::vector<Sheet> sheets;
    for (int row = 0; row < zones.y.sheets; ++row) {
        for (int column = 0; column < zones.x.sheets; ++column) {
            if (zones.at(2 * column, 2 * row) == 0) continue;
            claim(zones, column, row, true);
            sheets.push_back({row, column});
        }
    }
    for (;;) {
        int most = 0;
        Sheet best;
        for (int row = 0; row < zones.y.sheets; ++row) {
            for (int column = 0; column < zones.x.sheets; ++column) {
                const int claimed = claim(zones, column, row, false);
                if (claimed > most) {
                    most = claimed;
                    best = {row, column};
                }
            }
        }
        if (most == 0) return sheets;
        claim(zones, best.column, best.row, true);
        sheets.push_back(best);
    }
}

Zones zonesUnder(const std::vector<OutlineShape>& shapes, const SheetPlan& plan) {
    Box all;
    for (const auto& shape : shapes) all.include(shape.box);
    const double pen = tolerance::kHalfPenMm;
    Zones zones{axisFor(plan.stepXUm, plan.frameXUm - plan.stepXUm, all.highest.x() + pen),
                axisFor(plan.stepYUm, plan.frameYUm - plan.stepYUm, all.highest.y() + pen),
                {}};
    zones.touched.assign(zones.indexOf(0, zones.y.zones()), 0);
    return zones;
}

}  // namespace

SheetPlan emptyPlan(const SheetOptions& options, bool isLandscape) {
    SheetPlan plan;
    plan.options = options;
    plan.isLandscape = isLandscape;
    plan.sheetWidthUm = isLandscape ? options.paper.heightUm : options.paper.widthUm;
    plan.sheetHeightUm = isLandscape ? options.paper.widthUm : options.paper.heightUm;
    const Correction factor = correctionOf(plan);
    const auto onDrawing = [](long long um, double by, bool up) {
        const double exact = static_cast<double>(um) / by;
        return static_cast<long long>(up ? std::ceil(exact) : std::floor(exact));
    };
    plan.frameXUm = onDrawing(plan.sheetWidthUm - 2 * options.marginUm, factor.x, false);
    plan.frameYUm = onDrawing(plan.sheetHeightUm - 2 * options.marginUm, factor.y, false);
    plan.stepXUm = plan.frameXUm - onDrawing(options.overlapUm, factor.x, true);
    plan.stepYUm = plan.frameYUm - onDrawing(options.overlapUm, factor.y, true);
    return plan;
}

void keepSheetsUnder(const std::vector<OutlineShape>& shapes, SheetPlan& plan) {
    Zones zones = zonesUnder(shapes, plan);
    for (const auto& shape : shapes) touch(shape, zones);
    plan.columns = zones.x.sheets;
    plan.rows = zones.y.sheets;
    plan.sheets = coverOf(zones);
    for (Sheet& sheet : plan.sheets) sheet.row = plan.rows - 1 - sheet.row;
    std::sort(plan.sheets.begin(), plan.sheets.end(), [](const Sheet& a, const Sheet& b) {
        return a.row != b.row ? a.row < b.row : a.column < b.column;
    });
}

std::vector<OutlineShape> shapesOn(const SheetPlan& plan, const std::vector<Tracing>& tracings) {
    std::vector<OutlineShape> shapes;
    shapes.reserve(plan.placed.size());
    for (const auto& piece : plan.placed) {
        shapes.push_back(
            shapeOf(tracings[piece.tracing], piece.placement, tolerance::kCutFlatnessMm));
    }
    return shapes;
}

int joinsThroughPieces(const SheetPlan& plan, const std::vector<OutlineShape>& shapes) {
    int joins = 0;
    for (const auto& shape : shapes) {
        Zones zones = zonesUnder({shape}, plan);
        touch(shape, zones);
        joins += static_cast<int>(coverOf(zones).size()) - 1;
    }
    return joins;
}

std::string nameOf(const Sheet& sheet) {
    std::string letters;
    for (int rest = sheet.row; rest >= 0; rest = rest / 26 - 1) {
        letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
    }
    return letters + std::to_string(sheet.column + 1);
}

int pagesOf(const SheetPlan& plan) {
    return static_cast<int>(plan.sheets.size()) + (plan.firstBlock ? 0 : 1);
}

std::optional<std::size_t> sheetOnPage(const SheetPlan& plan, int page) {
    const auto index = static_cast<std::size_t>(page);
    if (!plan.firstBlock) return page == 0 ? std::nullopt : std::optional(index - 1);
    if (page == 0) return plan.firstBlock->sheet;
    return index <= plan.firstBlock->sheet ? index - 1 : index;
}

int pageOfSheet(const SheetPlan& plan, std::size_t sheet) {
    const int page = static_cast<int>(sheet);
    if (!plan.firstBlock) return page + 1;
    if (sheet == plan.firstBlock->sheet) return 0;
    return sheet < plan.firstBlock->sheet ? page + 1 : page;
}

Correction correctionOf(const SheetPlan& plan) {
    const SheetOptions& options = plan.options;
    return plan.isLandscape ? Correction{options.scaleY, options.scaleX}
                            : Correction{options.scaleX, options.scaleY};
}

Box frameOf(const SheetPlan& plan, const Sheet& sheet) {
    const long long x = sheet.column * plan.stepXUm;
    const long long y = (plan.rows - 1 - sheet.row) * plan.stepYUm;
    return {Point(mm(x), mm(y)), Point(mm(x + plan.frameXUm), mm(y + plan.frameYUm))};
}

Point onPaper(const SheetPlan& plan, const Sheet& sheet, const Point& drawingMm) {
    const Correction factor = correctionOf(plan);
    const double margin = mm(plan.options.marginUm);
    const Vector inFrame = drawingMm - frameOf(plan, sheet).lowest;
    return {margin + inFrame.x() * factor.x, margin + inFrame.y() * factor.y};
}

}  // namespace coutil
