#pragma once

#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <vector>

namespace coutil {

// The drawn body of the Measure bench: our own line drawing, in centimetres of a figure 170 cm
// tall, x 0 on the middle, y 0 on the floor and UP. The side view looks to the left, as the pattern
// lies with its front on the left.
enum class FigureView { front, back, side, seated, whole };

[[nodiscard]] QPainterPath bodyOutline(FigureView view);
[[nodiscard]] QPainterPath bodyDetails(FigureView view);  // thinner lines inside
[[nodiscard]] QRectF figureFrame(FigureView view);        // what of the drawing is shown

// A smooth line through points (Catmull-Rom), open.
[[nodiscard]] QPainterPath smoothThrough(const std::vector<QPointF>& points);

// Heights of the levels on the drawing, cm, and half the width of the front view there.
namespace figure {
inline constexpr double kArmpit = 128;
inline constexpr double kBust = 121.5;
inline constexpr double kUnderBust = 113.5;
inline constexpr double kWaist = 104.5;
inline constexpr double kHighHip = 95.5;
inline constexpr double kHip = 84.5;
inline constexpr double kCrown = 170;
}  // namespace figure

// Half the width of the front outline at a height between hip and armpit, cm.
[[nodiscard]] double halfWidthAt(double height);

}  // namespace coutil
