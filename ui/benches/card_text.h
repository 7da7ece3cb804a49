#pragma once

#include <QLabel>
#include <QString>

namespace coutil {

// Between the card's edge and what stands in it, the same on every bench.
inline constexpr int kCardMarginPx = 16;

// Headings and words of a card, so that all cards speak with one voice.
[[nodiscard]] QLabel* cardHeading(const QString& text);
[[nodiscard]] QLabel* quietText(const QString& text = {});  // wraps, in the palette's quiet colour

}  // namespace coutil
