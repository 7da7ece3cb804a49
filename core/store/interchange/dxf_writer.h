#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/point.h"

namespace coutil::interchange {

// Layers of ASTM D6673-10.
enum class DxfLayer {
    boundary = 1,
    turnPoints = 2,
    curvePoints = 3,
    notches = 4,
    mirrorLine = 6,
    grainLine = 7,
    internalLines = 8,
    cutOuts = 11,
    drillHoles = 13,
    sewingLines = 14,
    annotation = 15
};

// Collects an R12 text file (AC1009) as sewn-product exchange wants it: an empty HEADER, no TABLES,
// one BLOCK per piece, each inserted once. Coordinates in mm, y up, four decimals; text in 7 bits.
class DxfWriter {
  public:
    DxfWriter();

    // Between these two everything belongs to one piece; its name is made fit for a block.
    void beginBlock(std::string_view name);
    void endBlock();
    // After all blocks: text of the whole style.
    void endBlocks();

    void polyline(DxfLayer layer, const std::vector<Point>& points, bool isClosed);
    void line(DxfLayer layer, const Point& a, const Point& b);
    void point(DxfLayer layer, const Point& at);
    void text(DxfLayer layer, std::string_view text, const Point& at, double heightMm);
    void insert(std::string_view blockName, const Point& at);

    [[nodiscard]] std::string finished();

  private:
    void tag(int code, std::string_view value);
    void entity(std::string_view kind, DxfLayer layer);
    void at(const Point& point, int firstCode = 10);

    std::string dxf_;
};

}  // namespace coutil::interchange
