#pragma once

#include <array>
#include <string_view>

// The words of the text that confirmed outlines are kept as. One record a line, fields parted by
// one blank; lengths are whole micrometres, "-" where there is none; names stand in quotation
// marks, with \" \\ \n for what can't stand in them. Edges and level lines belong to the panel
// above them; a path is its start, then every control point as the way from the point before it.
//
//   coutil ink 1
//   lacing GAP
//   panel "NAME" both|left|right fold|loose GRAIN_X GRAIN_Y GRAIN_X GRAIN_Y
//   edge "NAME" ROLE up|down WAIST_MARK X Y DX DY DX DY DX DY ...
//   line "LEVEL" X Y X Y
//   seam "NAME" PANEL EDGE PANEL EDGE EASE
//   level "NAME" HEIGHT BODY TARGET PATTERN GAP
//   estimate NAME VALUE SD "SOURCE" FROM ...
namespace coutil::ink_text {

inline constexpr std::string_view kHead = "coutil ink 1\n";
inline constexpr std::string_view kLacing = "lacing";
inline constexpr std::string_view kPanel = "panel";
inline constexpr std::string_view kEdge = "edge";
inline constexpr std::string_view kLine = "line";
inline constexpr std::string_view kSeam = "seam";
inline constexpr std::string_view kLevel = "level";
inline constexpr std::string_view kEstimate = "estimate";
inline constexpr std::string_view kUp = "up";
inline constexpr std::string_view kDown = "down";
inline constexpr std::string_view kFold = "fold";
inline constexpr std::string_view kLoose = "loose";
// In the order of PanelSide.
inline constexpr std::array<std::string_view, 3> kSides{"both", "left", "right"};

}  // namespace coutil::ink_text
