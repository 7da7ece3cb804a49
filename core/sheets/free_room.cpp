#include "core/sheets/free_room.h"

#include <algorithm>
#include <cmath>

namespace coutil {
namespace {

constexpr double kCellMm = FreeRoom::kCellMm;
constexpr double kChordMm = 0.3;
// In mm that a place may be farther away to save a cell.
constexpr double kTakenCost = 1e7;
constexpr double kCoveredCost = 1e4;

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
      taken_(cellAt(rows_, columns_, 0), 0),
      covered_(taken_) {}

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
        const int steps = 1 + static_cast<int>(d.norm() / (kCellMm / 4));
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

// A row's middles inside, by where the outline crosses that height.
void FreeRoom::coverBy(const OutlineShape& piece) {
    std::vector<double> crossings;
    for (int row = 0; row < rows_; ++row) {
        const double y = frame_.lowest.y() + (row + 0.5) * kCellMm;
        if (y < piece.box.lowest.y() || y > piece.box.highest.y()) continue;
        crossings.clear();
        for (std::size_t i = 0; i < piece.points.size(); ++i) {
            const Point& a = piece.points[i];
            const Point& b = piece.points[(i + 1) % piece.points.size()];
            if ((a.y() > y) == (b.y() > y)) continue;
            crossings.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
        std::sort(crossings.begin(), crossings.end());
        const auto columnAt = [&](double x) {
            const double cell = std::floor((x - frame_.lowest.x()) / kCellMm);
            return static_cast<int>(std::clamp(cell, -1.0, static_cast<double>(columns_)));
        };
        for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
            const int last = std::min(columns_ - 1, columnAt(crossings[i + 1]));
            for (int c = std::max(0, columnAt(crossings[i])); c <= last; ++c) {
                covered_[cellAt(row, columns_, c)] = 1;
            }
        }
    }
}

// Sums over all cells below and left make each question a matter of four numbers.
std::vector<int> FreeRoom::sumsOf(const Cells& cells) const {
    const int wide = columns_ + 1;
    std::vector<int> sums(cellAt(rows_ + 1, wide, 0), 0);
    const auto sum = [&](int row, int column) -> int& { return sums[cellAt(row, wide, column)]; };
    for (int r = 0; r < rows_; ++r) {
        for (int c = 0; c < columns_; ++c) {
            sum(r + 1, c + 1) =
                cells[cellAt(r, columns_, c)] + sum(r, c + 1) + sum(r + 1, c) - sum(r, c);
        }
    }
    return sums;
}

FreeRoom::Place FreeRoom::placeFor(double widthMm, double heightMm, const Point& wanted) const {
    const std::vector<int> taken = sumsOf(taken_);
    const std::vector<int> covered = sumsOf(covered_);
    const int w = std::min(columns_, static_cast<int>(std::ceil(widthMm / kCellMm)));
    const int h = std::min(rows_, static_cast<int>(std::ceil(heightMm / kCellMm)));
    const auto within = [&](const std::vector<int>& sums, int row, int column) {
        const auto sum = [&](int r, int c) { return sums[cellAt(r, columns_ + 1, c)]; };
        return sum(row + h, column + w) - sum(row, column + w) - sum(row + h, column) +
               sum(row, column);
    };
    const bool isTooLarge = w * kCellMm < widthMm || h * kCellMm < heightMm;
    Place best{frame_.lowest, 0, 0};
    double least = 1e300;
    for (int r = 0; r + h <= rows_; ++r) {
        for (int c = 0; c + w <= columns_; ++c) {
            const Place place{frame_.lowest + kCellMm * Vector(c, r),
                              within(taken, r, c) + (isTooLarge ? 1 : 0), within(covered, r, c)};
            const Point centre = place.corner + Vector(widthMm, heightMm) / 2;
            const double cost =
                kTakenCost * place.taken + kCoveredCost * place.covered + (centre - wanted).norm();
            if (cost < least) {
                least = cost;
                best = place;
            }
        }
    }
    return best;
}

}  // namespace coutil
