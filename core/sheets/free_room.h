#pragma once

#include <vector>

#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_drawing.h"

namespace coutil {

// What of a box of paper is taken by lines and words, in cells of 1.5 mm, to find room for more
// words. Apart from that it knows where pieces lie: words there are cut up with the cloth.
class FreeRoom {
  public:
    static constexpr double kCellMm = 1.5;

    explicit FreeRoom(const Box& frame);

    void take(const SheetStroke& stroke);
    void take(const Box& box);
    void coverBy(const OutlineShape& piece);

    // A box inside the frame: its lower left corner, how many cells in it are taken, and how many
    // lie on pieces.
    struct Place {
        Point corner = Point::Zero();
        int taken = 0;
        int covered = 0;
        [[nodiscard]] bool isFree() const { return taken == 0; }
        [[nodiscard]] bool isOffPieces() const { return taken == 0 && covered == 0; }
    };

    // The box of that size that covers least of what is taken, then least of pieces, and among
    // those comes nearest to the wanted place of its centre. A box not wholly inside the frame is
    // never free.
    [[nodiscard]] Place placeFor(double widthMm, double heightMm, const Point& wanted) const;

  private:
    using Cells = std::vector<char>;
    void takeCell(const Point& at);
    [[nodiscard]] std::vector<int> sumsOf(const Cells& cells) const;

    Box frame_;
    int columns_;
    int rows_;
    Cells taken_;
    Cells covered_;
};

}  // namespace coutil
