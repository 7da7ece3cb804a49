#include "ui/window/window_place.h"

#include <algorithm>

namespace coutil {

namespace {

constexpr QSize kSmallScreen{1366, 800};
// A title bar and borders of the usual kinds; the real ones are known only once the window shows.
constexpr int kTitlePx = 40;
constexpr int kBorderPx = 8;

}  // namespace

bool isSmallScreen(const QSize& available) {
    return available.width() <= kSmallScreen.width() && available.height() <= kSmallScreen.height();
}

QRect withinScreen(const QRect& window, const QRect& available) {
    const QRect room = available.adjusted(kBorderPx, kTitlePx, -kBorderPx, -kBorderPx);
    const QSize size = window.size().boundedTo(room.size());
    const int left = std::clamp(window.left(), room.left(), room.right() + 1 - size.width());
    const int top = std::clamp(window.top(), room.top(), room.bottom() + 1 - size.height());
    return {QPoint(left, top), size};
}

}  // namespace coutil
