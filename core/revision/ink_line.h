#pragma once

#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

namespace coutil {

// How the lines of one confirmed revision are drawn, on every screen and paper. Numbers that follow
// each other differ in colour and in dash, so that they can be told apart without colour; 42
// numbers pass before a pair of both comes again. The name and date beside it say the rest.
struct InkLine {
    // Index of the hue in kInkHues. Each theme has its own lightness of it (ui/canvas/ink_colours).
    std::size_t hue = 0;
    std::string_view onPaper;      // "#0072B2": at least 3 : 1 on white
    std::vector<double> dashPens;  // drawn, left out, ... in widths of the line; empty: unbroken
};
[[nodiscard]] InkLine inkLineOf(int revisionNumber);

// Hues that colour-blind people can tell apart, by Okabe and Ito (2008), the values from memory:
// blue, vermilion, bluish green, reddish purple, orange, sky blue. Their yellow is left out: a thin
// line of it is lost on paper. The last three are darkened on paper for a thin line to be seen.
inline constexpr std::array<std::string_view, 6> kInkHues{"#0072B2", "#D55E00", "#009E73",
                                                          "#CC79A7", "#E69F00", "#56B4E9"};
inline constexpr std::array<std::string_view, 6> kInkHuesOnPaper{"#0072B2", "#D55E00", "#00855F",
                                                                 "#B8528C", "#A87300", "#2F86BE"};

}  // namespace coutil
