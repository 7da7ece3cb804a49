#include "core/store/interchange/dxf_writer.h"

#include "core/store/interchange/number_text.h"
#include "core/store/interchange/seven_bit_text.h"

namespace coutil::interchange {

namespace {

constexpr int kDecimals = 4;

std::string numberOf(DxfLayer layer) { return std::to_string(static_cast<int>(layer)); }

// R12 readers want a point in every coordinate.
std::string coordinate(double value) {
    std::string text = numberText(value, kDecimals);
    if (text.find('.') == std::string::npos) text += ".0";
    return text;
}

}  // namespace

DxfWriter::DxfWriter() {
    tag(0, "SECTION");
    tag(2, "HEADER");
    tag(0, "ENDSEC");
    tag(0, "SECTION");
    tag(2, "BLOCKS");
}

void DxfWriter::tag(int code, std::string_view value) {
    dxf_ += std::to_string(code);
    dxf_ += "\r\n";
    dxf_ += value;
    dxf_ += "\r\n";
}

void DxfWriter::at(const Point& point, int firstCode) {
    tag(firstCode, coordinate(point.x()));
    tag(firstCode + 10, coordinate(point.y()));
}

void DxfWriter::entity(std::string_view kind, DxfLayer layer) {
    tag(0, kind);
    tag(8, numberOf(layer));
}

void DxfWriter::beginBlock(std::string_view name) {
    entity("BLOCK", DxfLayer::boundary);
    tag(2, name);
    tag(70, "0");
    at(Point::Zero());
}

void DxfWriter::endBlock() { entity("ENDBLK", DxfLayer::boundary); }

void DxfWriter::endBlocks() {
    tag(0, "ENDSEC");
    tag(0, "SECTION");
    tag(2, "ENTITIES");
}

void DxfWriter::polyline(DxfLayer layer, const std::vector<Point>& points, bool isClosed) {
    entity("POLYLINE", layer);
    tag(66, "1");
    tag(70, isClosed ? "1" : "0");
    for (const Point& point : points) {
        entity("VERTEX", layer);
        at(point);
    }
    entity("SEQEND", layer);
}

void DxfWriter::line(DxfLayer layer, const Point& a, const Point& b) {
    entity("LINE", layer);
    at(a);
    at(b, 11);
}

void DxfWriter::point(DxfLayer layer, const Point& place) {
    entity("POINT", layer);
    at(place);
}

void DxfWriter::text(DxfLayer layer, std::string_view text, const Point& place, double heightMm) {
    entity("TEXT", layer);
    at(place);
    tag(40, coordinate(heightMm));
    tag(1, sevenBitText(text));
}

void DxfWriter::insert(std::string_view blockName, const Point& place) {
    entity("INSERT", DxfLayer::boundary);
    tag(2, blockName);
    at(place);
}

std::string DxfWriter::finished() {
    tag(0, "ENDSEC");
    tag(0, "EOF");
    return std::move(dxf_);
}

}  // namespace coutil::interchange
