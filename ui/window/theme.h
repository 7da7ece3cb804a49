#pragma once

#include <QPalette>

namespace coutil {

// Light and dark are palettes of our own; system takes the one of the two that is as light or dark
// as the desktop's own palette.
enum class Theme { system, light, dark };

[[nodiscard]] Theme storedTheme();
void storeTheme(Theme theme);

// Puts the theme in force in the whole program at once (style Fusion, so that every desktop shows
// the same window).
void applyTheme(Theme theme);

[[nodiscard]] QPalette paletteOf(Theme theme);

}  // namespace coutil
