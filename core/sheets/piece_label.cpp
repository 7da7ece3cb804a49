#include "core/sheets/piece_label.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

constexpr std::array kTextHeightsMm{3.0, 2.6, 2.2, 1.9, 1.6};
constexpr double kTallestNumberMm = 22;
constexpr double kLeastNumberMm = 5;
constexpr double kNumberGap = 0.35;  // of the number's height

// A rectangle for words: turned by turnRad about its centre.
struct Room {
    Point centre = Point::Zero();
    double widthMm = 0;
    double heightMm = 0;
    double turnRad = 0;
};

struct Block {
    std::vector<std::string> lines;
    double textMm = 0;
    double numberMm = 0;
    double widthMm = 0;
    double heightMm = 0;
    bool isWhole = false;
};

std::vector<std::string> labelTexts(const SheetPlan& plan, const PlacedTracing& piece,
                                    const Tracing& tracing, const SheetWords& words) {
    const bool hasTwin = plan.options.mirroredToo && tracing.isMirroredPair && tracing.cutCount > 1;
    const int count = hasTwin ? tracing.cutCount / 2 : tracing.cutCount;
    std::string side;
    if (tracing.side == PanelSide::left) side = words.leftSide;
    if (tracing.side == PanelSide::right) side = words.rightSide;
    std::string pair;
    if (hasTwin) {
        pair = piece.placement.isMirrored ? words.mirroredTwin : "";
    } else if (tracing.isMirroredPair && tracing.cutCount > 1) {
        pair = words.mirroredPair;
    }
    return {joinedBy({filled(words.panel, tracing.panel), side}, ", "),
            joinedBy({filled(words.cutCount, std::to_string(count)), pair,
                      tracing.isOnFold ? words.onFold : ""},
                     ", "),
            words.title.garment, words.title.client, stateOf(words)};
}

// The largest level rectangle of the same proportions of freedom inside a turned one.
Room levelRoom(const Room& room) {
    const double s = std::abs(std::sin(room.turnRad));
    const double c = std::abs(std::cos(room.turnRad));
    const double longSide = std::max(room.widthMm, room.heightMm);
    const double shortSide = std::min(room.widthMm, room.heightMm);
    Room level{room.centre, 0, 0, 0};
    const bool isWide = room.widthMm >= room.heightMm;
    if (shortSide <= 2 * s * c * longSide || std::abs(s - c) < 1e-9) {
        // Two corners lie on the long sides, the others may be anywhere between them.
        const double half = shortSide / 2;
        level.widthMm = isWide ? half / s : half / c;
        level.heightMm = isWide ? half / c : half / s;
    } else {
        const double cos2 = c * c - s * s;
        level.widthMm = (room.widthMm * c - room.heightMm * s) / cos2;
        level.heightMm = (room.heightMm * c - room.widthMm * s) / cos2;
    }
    return level;
}

Block blockFor(const std::vector<std::string>& texts, const Room& room, double textMm,
               bool withNumber) {
    Block block;
    block.textMm = textMm;
    for (const auto& text : texts) {
        for (auto& line : wrapped(text, room.widthMm, textMm)) {
            block.widthMm = std::max(block.widthMm, aboutWidthMm(line, textMm));
            block.lines.push_back(std::move(line));
        }
    }
    const double linesMm = kLineSpacing * textMm * static_cast<double>(block.lines.size());
    if (withNumber) {
        const double rest = (room.heightMm - linesMm) / (1 + kNumberGap);
        block.numberMm = std::min({kTallestNumberMm, rest, room.widthMm * 0.8});
    }
    block.heightMm = linesMm + block.numberMm * (1 + kNumberGap);
    block.isWhole = block.widthMm <= room.widthMm && block.heightMm <= room.heightMm &&
                    (!withNumber || block.numberMm >= kLeastNumberMm);
    block.widthMm = std::max(std::min(block.widthMm, room.widthMm), block.numberMm);
    return block;
}

Block largestBlock(const std::vector<std::string>& texts, const Room& room, bool wantsNumber) {
    Block block;
    for (const bool withNumber : {true, false}) {
        if (withNumber && !wantsNumber) continue;
        for (const double textMm : kTextHeightsMm) {
            block = blockFor(texts, room, textMm, withNumber);
            if (block.isWhole) return block;
        }
    }
    return block;
}

// How bad it is to have the block there: off every single sheet, and on lines.
double costAt(const SheetPlan& plan, const std::vector<SheetStroke>& lines, const Box& box) {
    const bool isOnOneSheet =
        std::any_of(plan.sheets.begin(), plan.sheets.end(), [&](const Sheet& sheet) {
            const Box frame = frameOf(plan, sheet);
            return (box.lowest.array() >= frame.lowest.array()).all() &&
                   (box.highest.array() <= frame.highest.array()).all();
        });
    double cost = isOnOneSheet ? 0 : 1000;
    for (const SheetStroke& line : lines) {
        if (!boxesMeet(boundsOf(line.path), box)) continue;
        const auto points = flattened(line.path, 0.3);
        for (std::size_t i = 0; i + 1 < points.size(); ++i) {
            if (segmentMeets(points[i], points[i + 1], box)) cost += 10;
        }
    }
    return cost;
}

// The best place of the block's centre in its room.
Point placeIn(const Room& room, const Block& block, const SheetPlan& plan,
              const std::vector<SheetStroke>& lines) {
    if (room.turnRad != 0) return room.centre;
    const double roomX = std::max(0.0, room.widthMm - block.widthMm);
    const double roomY = std::max(0.0, room.heightMm - block.heightMm);
    const Vector half(block.widthMm / 2, block.heightMm / 2);
    Point best = room.centre;
    double least = 1e300;
    constexpr int kTries = 8;
    for (int j = -kTries; j <= kTries; ++j) {
        for (int i = -2; i <= 2; ++i) {
            const Vector by(roomX * i / 4, roomY * j / (2 * kTries));
            const Point at = room.centre + by;
            const double cost = costAt(plan, lines, {at - half, at + half}) + by.norm() / 100;
            if (cost < least) {
                least = cost;
                best = at;
            }
        }
    }
    return best;
}

std::vector<SheetLettering> lettered(const Block& block, const Tracing& tracing, const Room& room,
                                     const Point& centre) {
    const Vector up(-std::sin(room.turnRad), std::cos(room.turnRad));
    std::vector<SheetLettering> letterings;
    double fromTop = block.numberMm;
    const auto at = [&](double downMm) {
        return Point(centre + up * (block.heightMm / 2 - downMm));
    };
    if (block.numberMm > 0) {
        letterings.push_back({tracing.panel, at(fromTop), block.numberMm, room.turnRad,
                              TextAnchor::centre, SheetInk::pale, room.widthMm});
        fromTop += block.numberMm * kNumberGap;
    }
    for (const auto& line : block.lines) {
        fromTop += block.textMm;
        letterings.push_back({line, at(fromTop), block.textMm, room.turnRad, TextAnchor::centre,
                              SheetInk::text, room.widthMm});
        fromTop += block.textMm * (kLineSpacing - 1);
    }
    return letterings;
}

// Level if the words go in whole, else along the piece, never upside down; where neither holds all,
// first the title is left out, then the count: the panel's name comes last.
std::pair<Room, Block> chosenBlock(std::vector<std::string> texts, const Room& room,
                                   bool wantsNumber) {
    const Room level = levelRoom(room);
    for (;;) {
        const Block block = largestBlock(texts, level, wantsNumber);
        if (block.isWhole) return {level, block};
        const Block along = largestBlock(texts, room, wantsNumber);
        if (along.isWhole) return {room, along};
        if (texts.size() == 1) return {level, block};
        texts.resize(texts.size() > 2 ? 2 : 1);
    }
}

// The number on its own, where the tracing has room for it; level, so that it is read at once.
std::vector<SheetLettering> numberOf(const Tracing& tracing, const PlacedTracing& piece) {
    if (tracing.numberHeightMm <= 0) return {};
    // The room is as wide as high; turned by less than a quarter it holds this much of a level one.
    const double turn = std::remainder(piece.placement.turnRad, std::numbers::pi / 2);
    const double part = 1 / (std::abs(std::sin(turn)) + std::abs(std::cos(turn)));
    const double heightMm = std::min(kTallestNumberMm, tracing.numberHeightMm * part);
    const Point centre = placed(tracing.numberAt, piece.placement);
    return {{tracing.panel, centre - Vector(0, heightMm / 2), heightMm, 0, TextAnchor::centre,
             SheetInk::pale, tracing.numberHeightMm * part}};
}

}  // namespace

std::vector<SheetLettering> labelOf(const SheetPlan& plan, const PlacedTracing& piece,
                                    const Tracing& tracing, const SheetWords& words,
                                    const std::vector<SheetStroke>& lines) {
    // Mirroring turns the other way round, but a rectangle about its centre doesn't mind.
    Room room{placed(tracing.labelAt, piece.placement), tracing.labelWidthMm, tracing.labelHeightMm,
              std::remainder(piece.placement.turnRad, std::numbers::pi)};
    std::vector<SheetLettering> letterings = numberOf(tracing, piece);
    if (room.widthMm <= 0 || room.heightMm <= 0) return letterings;
    const auto [chosen, block] =
        chosenBlock(labelTexts(plan, piece, tracing, words), room, letterings.empty());
    const Point centre = placeIn(chosen, block, plan, lines);
    for (auto& lettering : lettered(block, tracing, chosen, centre)) {
        letterings.push_back(std::move(lettering));
    }
    return letterings;
}

}  // namespace coutil
