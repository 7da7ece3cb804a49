#include "core/sheets/free_room.h"

#include <algorithm>
#include <cmath>

namespace coutil {
namespace {

constexpr double kCellMm = 1.5;
constexpr double kChordMm = 0.3;

std::size_t cellAt(int row, int columns, int column) {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
           static_cast<std::size_t>(column);
}

int cellsIn(double lengthMm) {
    return std::max(1, static_cast<int>(std::floor(lengthMm / kCellMm)));
}

}  // namespace

FreeRoom::FreeRoom(const Box& frame)
    : frame_(frame),
      columns_(cellsIn(frame.widthMm())),
      rows_(cellsIn(frame.heightMm())),
      taken_(cellAt(rows_, columns_, 0), 0) {}

void FreeRoom::takeCell(const Point& at) {
    const auto column = static_cast<int>(std::floor((at.x() - frame_.lowest.x()) / kCellMm));
    const auto row = static_cast<int>(std::floor((at.y() - frame_.lowest.y()) / kCellMm));
    if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return;
    taken_[cellAt(row, columns_, column)] = 1;
}

void FreeRoom::take(const SheetStroke& stroke) {
    const std::vector<Point> points = flattened(stroke.path, kChordMm);
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Vector d = points[i + 1] - points[i];
        const int steps = 1 + static_cast<int>(d.norm() / (kCellMm / 2));
        for (int k = 0; k <= steps; ++k) takeCell(points[i] + d * k / steps);
    }
}

void FreeRoom::take(const Box& box) {
    const int across = 1 + static_cast<int>(std::ceil(box.widthMm() / kCellMm));
    const int up = 1 + static_cast<int>(std::ceil(box.heightMm() / kCellMm));
    for (int j = 0; j < up; ++j) {
        for (int i = 0; i < across; ++i) {
            takeCell((box.lowest + kCellMm * Vector(i, j)).cwiseMin(box.highest));
        }
    }
}

FreeRoom::Place FreeRoom::placeFor(double widthMm, double heightMm, const Point& wanted) const {
    // Sums over all cells below and left make each question a matter of four numbers.
    const int wide = columns_ + 1;
    std::vector<int> sums(cellAt(rows_ + 1, wide, 0), 0);
    const auto sum = [&](int row, int column) -> int& { return sums[cellAt(row, wide, column)]; };
    for (int r = 0; r < rows_; ++r) {
        for (int c = 0; c < columns_; ++c) {
            sum(r + 1, c + 1) =
                taken_[cellAt(r, columns_, c)] + sum(r, c + 1) + sum(r + 1, c) - sum(r, c);
        }
    }
    const int w = std::min(columns_, static_cast<int>(std::ceil(widthMm / kCellMm)));
    const int h = std::min(rows_, static_cast<int>(std::ceil(heightMm / kCellMm)));
    Place best{frame_.lowest, 0};
    double least = 1e300;
    for (int r = 0; r + h <= rows_; ++r) {
        for (int c = 0; c + w <= columns_; ++c) {
            const int taken = sum(r + h, c + w) - sum(r, c + w) - sum(r + h, c) + sum(r, c);
            const Point corner = frame_.lowest + kCellMm * Vector(c, r);
            const Point centre = corner + Vector(widthMm, heightMm) / 2;
            const double cost = 1000.0 * taken + (centre - wanted).norm();
            if (cost < least) {
                least = cost;
                best = {corner, taken};
            }
        }
    }
    return best;
}

}  // namespace coutil
