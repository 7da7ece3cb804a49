#pragma once

#include <QRect>
#include <QSize>

namespace coutil {

// Whether a screen, less what panels and docks take of it, is so small that the window had better
// have all of it.
[[nodiscard]] bool isSmallScreen(const QSize& available);

// A window's geometry (without its frame) so that the frame too lies within the screen: moved, and
// made smaller where it must be. Unchanged when it fits.
[[nodiscard]] QRect withinScreen(const QRect& window, const QRect& available);

}  // namespace coutil
