#include "core/sheets/sheet_imprint.h"

#include <algorithm>
#include <array>
#include <numbers>
#include <optional>

#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

// Capitals of the large name, largest first. From 8 mm a name is still read from where one stands
// at a table (common practice, no source); below that, on a piece is the better place.
constexpr std::array kNameHeightsMm{26.0, 20.0, 15.0, 11.0, 8.0};
constexpr std::array kTinyNameHeightsMm{6.0, 4.0, 3.0};
constexpr std::array kNoteHeightsMm{1.9, 1.6};
constexpr std::array kNoteWidthsMm{120.0, 70.0, 48.0, 34.0, 24.0};
constexpr double kClearMm = 0.8;  // around the words

struct Block {
    std::vector<std::string> lines;
    double textMm = 0;
    double widthMm = 0;
    double heightMm = 0;
    bool isUpright = false;
};

Block blockOf(const std::vector<std::string>& texts, double widestMm, double textMm) {
    Block block;
    block.textMm = textMm;
    for (const auto& text : texts) {
        for (auto& line : wrapped(text, widestMm, textMm)) {
            block.widthMm = std::max(block.widthMm, aboutWidthMm(line, textMm));
            block.lines.push_back(std::move(line));
        }
    }
    block.heightMm = kLineSpacing * textMm * static_cast<double>(block.lines.size());
    return block;
}

FreeRoom::Place placeOf(const Block& block, const FreeRoom& room, const Point& wanted) {
    const double across = block.widthMm + 2 * kClearMm;
    const double up = block.heightMm + 2 * kClearMm;
    return block.isUpright ? room.placeFor(up, across, wanted) : room.placeFor(across, up, wanted);
}

struct FoundRoom {
    Block block;
    FreeRoom::Place place;
};

// The first shape that finds a place off everything, else the first that finds one off lines, else
// the one on fewest.
FoundRoom roomFor(const std::vector<std::string>& texts, const Box& frame, const FreeRoom& room) {
    std::optional<FoundRoom> best;
    const auto isBetter = [&](const FreeRoom::Place& place) {
        if (!best) return true;
        if (place.isFree() != best->place.isFree()) return place.isFree();
        return !place.isFree() && place.taken < best->place.taken;
    };
    for (const double textMm : kNoteHeightsMm) {
        for (const bool isUpright : {false, true}) {
            for (const double widest : kNoteWidthsMm) {
                const double along = isUpright ? frame.heightMm() : frame.widthMm();
                Block block = blockOf(texts, std::min(widest, along - 4), textMm);
                block.isUpright = isUpright;
                const FreeRoom::Place place = placeOf(block, room, frame.lowest);
                if (place.isOffPieces()) return {block, place};
                if (isBetter(place)) best = {block, place};
            }
        }
    }
    return *best;
}

void write(const FoundRoom& found, FreeRoom& room, SheetDrawing& drawing) {
    const Block& block = found.block;
    const Vector size = block.isUpright ? Vector(block.heightMm, block.widthMm)
                                        : Vector(block.widthMm, block.heightMm);
    const Point corner = found.place.corner + Vector::Constant(kClearMm);
    double fromTop = 0;
    for (const auto& line : block.lines) {
        fromTop += kLineSpacing * block.textMm;
        const double baseline = fromTop - 0.4 * block.textMm;
        const Point at = block.isUpright ? Point(corner + Vector(baseline, 0))
                                         : Point(corner + Vector(0, block.heightMm - baseline));
        drawing.letterings.push_back({line, at, block.textMm,
                                      block.isUpright ? std::numbers::pi / 2 : 0.0,
                                      TextAnchor::left, SheetInk::text, block.widthMm});
    }
    room.take(Box{corner, corner + size});
}

}  // namespace

void writeImprint(const std::string& place, const std::vector<std::string>& notes, const Box& frame,
                  FreeRoom& room, SheetDrawing& drawing) {
    std::vector<std::string> all{place};
    all.insert(all.end(), notes.begin(), notes.end());
    const FoundRoom whole = roomFor(all, frame, room);
    if (whole.place.isOffPieces()) return write(whole, room, drawing);
    write(roomFor({place}, frame, room), room, drawing);
    write(roomFor(notes, frame, room), room, drawing);
}

void writeLargeName(const std::string& name, const Box& frame, FreeRoom& room,
                    SheetDrawing& drawing) {
    const Point middle = (frame.lowest + frame.highest) / 2;
    const auto tryHeight = [&](double heightMm, bool onPieces) {
        const double widthMm = aboutWidthMm(name, heightMm);
        const Vector clear = Vector::Constant(kClearMm + 0.05 * heightMm);
        const Vector size = Vector(widthMm, heightMm) + 2 * clear;
        const FreeRoom::Place place = room.placeFor(size.x(), size.y(), middle);
        if (!place.isOffPieces() && !(onPieces && place.isFree())) return false;
        drawing.letterings.push_back({name, place.corner + clear + Vector(widthMm / 2, 0), heightMm,
                                      0, TextAnchor::centre, SheetInk::pale, widthMm});
        room.take(Box{place.corner, place.corner + size});
        return true;
    };
    for (const double height : kNameHeightsMm) {
        if (tryHeight(height, false)) return;
    }
    for (const double height : kNameHeightsMm) {
        if (tryHeight(height, true)) return;
    }
    for (const double height : kTinyNameHeightsMm) {
        if (tryHeight(height, true)) return;
    }
}

}  // namespace coutil
