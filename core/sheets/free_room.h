#pragma once

#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// What of a sheet is taken by lines and words, in cells of 1.5 mm, to find room for more words.
class FreeRoom {
  public:
    explicit FreeRoom(const Box& frame);  // paper millimetres

    void take(const SheetStroke& stroke);
    void take(const Box& box);

    // A box inside the frame: its lower left corner, and how many cells in it are taken.
    struct Place {
        Point corner = Point::Zero();
        int taken = 0;
    };

    // The box of that size that covers least of what is taken and, among those, comes nearest to
    // the wanted place of its centre.
    [[nodiscard]] Place placeFor(double widthMm, double heightMm, const Point& wanted) const;

  private:
    void takeCell(const Point& at);

    Box frame_;
    int columns_;
    int rows_;
    std::vector<char> taken_;
};

}  // namespace coutil
