#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/alterations/alteration.h"

namespace coutil {

enum class MarkKind {
    pinned,
    opened,
    raise,
    lower,
    longer,
    shorter,
    bustPointHigher,
    bustPointLower,
    bustPointWider,
    gapes,
    cutsIn,
    bonePokes
};
// "pinned", "opened", "raise", "lower", "longer", "shorter", "bust_point_higher",
// "bust_point_lower", "bust_point_wider", "gapes", "cuts_in", "bone_pokes".
[[nodiscard]] std::string_view keyOf(MarkKind kind);
[[nodiscard]] std::optional<MarkKind> markKindNamed(std::string_view key);

// Where a mark was read. On a seam (or "centre front", "centre back"); across the middle of a panel
// at a height (a tuck); at a slit from the top or bottom edge of a panel with a closed end; on a
// top or bottom line; at a height; or nowhere in particular (bust point marks, notes).
struct SeamPlace {
    std::string seam;
    double positionMm = 0;
    bool operator==(const SeamPlace&) const = default;
};
struct TuckPlace {
    std::string panel;
    double heightMm = 0;
    bool operator==(const TuckPlace&) const = default;
};
struct SlitPlace {
    std::string panel;
    EdgeLine from = EdgeLine::top;
    double alongMm = 0;
    double lengthMm = 0;
    bool operator==(const SlitPlace&) const = default;
};
struct OnLinePlace {
    EdgeLine line = EdgeLine::top;
    LinePlace at;
    bool operator==(const OnLinePlace&) const = default;
};
using MarkPlace =
    std::variant<std::monostate, SeamPlace, TuckPlace, SlitPlace, OnLinePlace, HeightPlace>;

// The spot on a photo a mark was read from: shares of its width and height from the upper left
// corner, 0..1.
struct PhotoSpot {
    std::string photo;
    double x = 0;
    double y = 0;
    bool operator==(const PhotoSpot&) const = default;
};

// One observation of a fitting: a reading, not yet a change. The amount (mm, never negative, what
// the tape says) is the whole across the seam on each side named; 0 for notes.
struct Mark {
    std::string id;  // UUID
    MarkKind kind = MarkKind::pinned;
    MarkPlace place{};
    double amountMm = 0;
    BodySide side = BodySide::both;
    std::string readBy{};
    std::string note{};
    std::optional<PhotoSpot> spot{};
    bool isOn = true;  // switched off: kept, makes no alteration

    bool operator==(const Mark&) const = default;
};

}  // namespace coutil
