#include "core/sheets/piece_cells.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

double mm(long long um) { return static_cast<double>(um) / 1000; }

// Half the space between pieces, and what the chords may have cut off.
constexpr double kGrowMm = tolerance::kBetweenTracingsMm / 2 + tolerance::kSearchFlatnessMm;

std::size_t at(int row, int width, int column) {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(width) +
           static_cast<std::size_t>(column);
}

struct Canvas {
    PieceCells& piece;
    const CellGrid& grid;
    void fill(int row, int first, int last) const {
        first = std::max(first, 0);
        last = std::min(last, piece.columns - 1);
        for (int c = first; c <= last; ++c) {
            piece.bits[at(row, piece.words, c / 64)] |= std::uint64_t{1} << (c % 64);
        }
    }
    [[nodiscard]] int column(double x) const {
        return static_cast<int>(std::floor(x / grid.cellXMm));
    }
};

// Cells near one side of the outline: row by row, the stretch of the side within reach.
void fillAlong(const Canvas& canvas, const Point& a, const Point& b) {
    const double low = std::min(a.y(), b.y()) - kGrowMm;
    const double high = std::max(a.y(), b.y()) + kGrowMm;
    const double cell = canvas.grid.cellYMm;
    const int first = std::max(0, static_cast<int>(std::floor(low / cell)));
    const int last = std::min(canvas.piece.rows - 1, static_cast<int>(std::floor(high / cell)));
    for (int row = first; row <= last; ++row) {
        double t0 = 0;
        double t1 = 1;
        if (const double dy = b.y() - a.y(); dy != 0) {
            const double ta = (row * cell - kGrowMm - a.y()) / dy;
            const double tb = ((row + 1) * cell + kGrowMm - a.y()) / dy;
            t0 = std::max(t0, std::min(ta, tb));
            t1 = std::min(t1, std::max(ta, tb));
            if (t0 > t1) continue;
        }
        const auto [x0, x1] =
            std::minmax({a.x() + t0 * (b.x() - a.x()), a.x() + t1 * (b.x() - a.x())});
        canvas.fill(row, canvas.column(x0 - kGrowMm), canvas.column(x1 + kGrowMm));
    }
}

// Cells inside: what no side comes near is wholly in or wholly out, so a row's middle tells.
void fillInside(const Canvas& canvas, const OutlineShape& shape) {
    std::vector<double> crossings;
    for (int row = 0; row < canvas.piece.rows; ++row) {
        const double y = (row + 0.5) * canvas.grid.cellYMm;
        crossings.clear();
        for (std::size_t i = 0; i < shape.points.size(); ++i) {
            const Point& a = shape.points[i];
            const Point& b = shape.points[(i + 1) % shape.points.size()];
            if ((a.y() > y) == (b.y() > y)) continue;
            crossings.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
        std::sort(crossings.begin(), crossings.end());
        for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
            canvas.fill(row, canvas.column(crossings[i]), canvas.column(crossings[i + 1]));
        }
    }
}

void sumUp(PieceCells& piece) {
    const auto wide = static_cast<std::size_t>(piece.columns) + 1;
    piece.sums.assign(wide * (static_cast<std::size_t>(piece.rows) + 1), 0);
    for (int r = 0; r < piece.rows; ++r) {
        std::uint32_t inRow = 0;
        for (int c = 0; c < piece.columns; ++c) {
            const auto word = piece.bits[at(r, piece.words, c / 64)];
            inRow += static_cast<std::uint32_t>((word >> (c % 64)) & 1U);
            const std::size_t below = at(r, piece.columns + 1, c + 1);
            piece.sums[below + wide] = piece.sums[below] + inRow;
        }
    }
}

// Set bits of a word (the classic sum in parallel): no call into a library where the processor has
// no instruction for it.
int bitsIn(std::uint64_t w) {
    w -= (w >> 1) & 0x5555555555555555ULL;
    w = (w & 0x3333333333333333ULL) + ((w >> 2) & 0x3333333333333333ULL);
    w = (w + (w >> 4)) & 0x0F0F0F0F0F0F0F0FULL;
    return static_cast<int>((w * 0x0101010101010101ULL) >> 56);
}

}  // namespace

int PieceCells::cellsIn(int left, int bottom, int right, int top) const {
    left = std::clamp(left, 0, columns);
    right = std::clamp(right, left, columns);
    bottom = std::clamp(bottom, 0, rows);
    top = std::clamp(top, bottom, rows);
    const auto sum = [this](int r, int c) { return sums[at(r, columns + 1, c)]; };
    return static_cast<int>(sum(top, right) - sum(bottom, right) - sum(top, left) +
                            sum(bottom, left));
}

CellGrid cellGridFor(const SheetPlan& plan, double wantedMm) {
    CellGrid grid;
    grid.perStepX = std::max(4, static_cast<int>(std::lround(mm(plan.stepXUm) / wantedMm)));
    grid.perStepY = std::max(4, static_cast<int>(std::lround(mm(plan.stepYUm) / wantedMm)));
    grid.cellXMm = mm(plan.stepXUm) / grid.perStepX;
    grid.cellYMm = mm(plan.stepYUm) / grid.perStepY;
    grid.overlapX = static_cast<int>(mm(plan.frameXUm - plan.stepXUm) / grid.cellXMm);
    grid.overlapY = static_cast<int>(mm(plan.frameYUm - plan.stepYUm) / grid.cellYMm);
    return grid;
}

PieceCells cellsOf(const Tracing& tracing, double turnRad, bool isMirrored, const CellGrid& grid) {
    PieceCells piece;
    piece.atOrigin = {turnRad, Vector::Zero(), isMirrored};
    OutlineShape shape = shapeOf(tracing, piece.atOrigin, tolerance::kSearchFlatnessMm);
    piece.atOrigin.shift = Vector::Constant(kGrowMm) - shape.box.lowest;
    for (Point& p : shape.points) p += piece.atOrigin.shift;
    const double wide = shape.box.widthMm() + 2 * kGrowMm;
    const double tall = shape.box.heightMm() + 2 * kGrowMm;
    piece.columns = static_cast<int>(std::ceil(wide / grid.cellXMm));
    piece.rows = static_cast<int>(std::ceil(tall / grid.cellYMm));
    piece.words = (piece.columns + 63) / 64;
    piece.bits.assign(at(piece.rows, piece.words, 0), 0);
    const Canvas canvas{piece, grid};
    for (std::size_t i = 0; i < shape.points.size(); ++i) {
        fillAlong(canvas, shape.points[i], shape.points[(i + 1) % shape.points.size()]);
    }
    fillInside(canvas, shape);
    sumUp(piece);
    return piece;
}

int sharedCells(const PieceCells& a, int ax, int ay, const PieceCells& b, int bx, int by) {
    if (ax >= bx + b.columns || bx >= ax + a.columns) return 0;
    const int first = std::max(ay, by);
    const int last = std::min(ay + a.rows, by + b.rows);
    if (first >= last) return 0;
    // Word by word of a; b's row is read from the cell where a's word starts, so that every row of
    // the pair is shifted alike. Cells outside either piece are never set.
    const int left = std::max(ax, bx) - ax;
    const int right = std::min(ax + a.columns, bx + b.columns) - ax;
    const std::uint64_t* rowA = a.bits.data() + static_cast<std::ptrdiff_t>(first - ay) * a.words;
    const std::uint64_t* rowB = b.bits.data() + static_cast<std::ptrdiff_t>(first - by) * b.words;
    int shared = 0;
    for (int y = first; y < last; ++y, rowA += a.words, rowB += b.words) {
        for (int word = left / 64; word * 64 < right; ++word) {
            const int cell = ax + word * 64 - bx;
            const int low = cell >= 0 ? cell / 64 : -1 - (-cell - 1) / 64;
            const int bit = cell - low * 64;
            std::uint64_t theirs = low >= 0 && low < b.words ? rowB[low] >> bit : 0;
            if (bit > 0 && low + 1 >= 0 && low + 1 < b.words) theirs |= rowB[low + 1] << (64 - bit);
            const std::uint64_t both = rowA[word] & theirs;
            if (both != 0) shared += bitsIn(both);
        }
    }
    return shared;
}

Placement placementAt(const PieceCells& piece, const CellGrid& grid, int x, int y) {
    Placement placement = piece.atOrigin;
    placement.shift += Vector(x * grid.cellXMm, y * grid.cellYMm);
    return placement;
}

}  // namespace coutil
