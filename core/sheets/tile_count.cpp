#include "core/sheets/tile_count.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace coutil {
namespace {

constexpr int kPowerSteps = 256;
constexpr double kPower = 0.3;

// fill^0.3 in 256 steps, on a grid of a millionth so that no two machines' pow can differ.
const std::array<double, kPowerSteps + 1>& powers() {
    static const auto table = [] {
        std::array<double, kPowerSteps + 1> made{};
        for (std::size_t i = 0; i < made.size(); ++i) {
            const double part = static_cast<double>(i) / kPowerSteps;
            made[i] = std::round(std::pow(part, kPower) * 1e6) / 1e6;
        }
        return made;
    }();
    return table;
}

std::vector<int> zoneStarts(int perStep, int overlap, int sheets) {
    std::vector<int> starts{0};
    for (int k = 1; k < sheets; ++k) {
        starts.push_back(k * perStep);
        starts.push_back(k * perStep + overlap);
    }
    starts.push_back(sheets * perStep + overlap);
    return starts;
}

// The zone that holds a cell; cells beyond the board count to the last zone.
int zoneOf(int cell, int perStep, int overlap, int sheets) {
    const int sheet = cell / perStep;
    if (sheet >= sheets) return 2 * sheets - 2;
    return sheet > 0 && cell % perStep < overlap ? 2 * sheet - 1 : 2 * sheet;
}

}  // namespace

TileCount::TileCount(const CellGrid& grid, int columns, int rows)
    : grid_(grid),
      columns_(columns),
      rows_(rows),
      startX_(zoneStarts(grid.perStepX, grid.overlapX, columns)),
      startY_(zoneStarts(grid.perStepY, grid.overlapY, rows)),
      filled_(indexOf(0, zonesY()), 0) {}

void TileCount::add(const PieceCells& piece, int x, int y, int sign) {
    const int lastX = zoneOf(x + piece.columns - 1, grid_.perStepX, grid_.overlapX, columns_);
    const int lastY = zoneOf(y + piece.rows - 1, grid_.perStepY, grid_.overlapY, rows_);
    for (int j = zoneOf(y, grid_.perStepY, grid_.overlapY, rows_); j <= lastY; ++j) {
        const auto v = static_cast<std::size_t>(j);
        for (int i = zoneOf(x, grid_.perStepX, grid_.overlapX, columns_); i <= lastX; ++i) {
            const auto u = static_cast<std::size_t>(i);
            filled_[indexOf(i, j)] += sign * piece.cellsIn(startX_[u] - x, startY_[v] - y,
                                                           startX_[u + 1] - x, startY_[v + 1] - y);
        }
    }
}

bool TileCount::isShown(int zoneX, int zoneY) const {
    for (const int j : {zoneY - zoneY % 2, zoneY + zoneY % 2}) {
        for (const int i : {zoneX - zoneX % 2, zoneX + zoneX % 2}) {
            if (filled(i, j) > 0) return true;
        }
    }
    return false;
}

int TileCount::sheets() const {
    int count = 0;
    for (int j = 0; j < zonesY(); ++j) {
        for (int i = 0; i < zonesX(); ++i) {
            if (filled(i, j) == 0) continue;
            const bool isAlone = i % 2 == 0 && j % 2 == 0;
            if (isAlone || !isShown(i, j)) ++count;
        }
    }
    return count;
}

double TileCount::spread() const {
    const double whole = grid_.perStepX * grid_.perStepY;
    double sum = 0;
    for (int j = 0; j < zonesY(); j += 2) {
        for (int i = 0; i < zonesX(); i += 2) {
            if (filled(i, j) == 0) continue;
            const double part = std::min(1.0, filled(i, j) / whole);
            sum += powers()[static_cast<std::size_t>(std::ceil(part * kPowerSteps))];
        }
    }
    return sum;
}

int TileCount::sheetsOf(const PieceCells& piece, int x, int y) const {
    int count = 0;
    const int lastX = zoneOf(x + piece.columns - 1, grid_.perStepX, grid_.overlapX, columns_);
    const int lastY = zoneOf(y + piece.rows - 1, grid_.perStepY, grid_.overlapY, rows_);
    int firstX = zoneOf(x, grid_.perStepX, grid_.overlapX, columns_);
    int firstY = zoneOf(y, grid_.perStepY, grid_.overlapY, rows_);
    firstX += firstX % 2;
    firstY += firstY % 2;
    for (int j = firstY; j <= lastY; j += 2) {
        const auto v = static_cast<std::size_t>(j);
        for (int i = firstX; i <= lastX; i += 2) {
            const auto u = static_cast<std::size_t>(i);
            const int cells = piece.cellsIn(startX_[u] - x, startY_[v] - y, startX_[u + 1] - x,
                                            startY_[v + 1] - y);
            count += cells > 0 ? 1 : 0;
        }
    }
    return count;
}

}  // namespace coutil
