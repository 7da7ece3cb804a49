#pragma once

#include <QLabel>
#include <QString>

namespace coutil {

// Headings and words of a card, so that all cards speak with one voice.
[[nodiscard]] QLabel* cardHeading(const QString& text);
[[nodiscard]] QLabel* quietText(const QString& text = {});  // wraps, in the palette's quiet colour

}  // namespace coutil
