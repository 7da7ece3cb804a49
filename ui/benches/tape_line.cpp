#include "ui/benches/tape_line.h"

#include <optional>
#include <utility>
#include <vector>

namespace coutil {

namespace {

// How far a level ring bulges on the drawing, which is seen from a little above.
constexpr double kRingSag = 2.0;
constexpr double kSideTapeX = -1.5;
constexpr double kLevelReach = 17;

// A ring about the body from left to right: the near half sags, the far half rises.
TapeLine ring(double left, double right, double height, double sag = kRingSag) {
    TapeLine line;
    const QRectF box(left, height - sag, right - left, 2 * sag);
    line.seen.arcMoveTo(box, 180);
    line.seen.arcTo(box, 180, -180);
    line.hidden.arcMoveTo(box, 0);
    line.hidden.arcTo(box, 0, -180);
    return line;
}

TapeLine girth(double height) {
    const double half = halfWidthAt(height);
    return ring(-half, half, height);
}

TapeLine length(FigureView view, const std::vector<QPointF>& points) {
    TapeLine line;
    line.view = view;
    line.seen = smoothThrough(points);
    line.hasEnds = true;
    return line;
}

void addLevel(TapeLine& line, double height, double left, double right) {
    line.levels.moveTo(left, height);
    line.levels.lineTo(right, height);
}

// Straight up or down from the waist to a level, at the side of the body.
TapeLine heightFromWaist(double height) {
    TapeLine line = length(FigureView::side, {{kSideTapeX, figure::kWaist}, {kSideTapeX, height}});
    addLevel(line, figure::kWaist, -kLevelReach, kLevelReach);
    addLevel(line, height, -kLevelReach, kLevelReach);
    return line;
}

TapeLine frontArc() {
    const double half = halfWidthAt(figure::kBust);
    TapeLine line = ring(-half, half, figure::kBust);
    line.hidden = QPainterPath();
    line.hasEnds = true;
    return line;
}

TapeLine scyeDepth() {
    TapeLine line = length(FigureView::back, {{0, 146}, {0, figure::kArmpit}});
    addLevel(line, figure::kArmpit, -kLevelReach, kLevelReach);
    return line;
}

TapeLine stature() {
    TapeLine line = length(FigureView::whole, {{-33, 0}, {-33, figure::kCrown}});
    addLevel(line, 0, -36, 14);
    addLevel(line, figure::kCrown, -36, 8);
    return line;
}

TapeLine waistToLap() {
    TapeLine line = length(FigureView::seated, {{-13.5, figure::kWaist}, {-14.5, 90.4}});
    addLevel(line, figure::kWaist, -20, 14);
    return line;
}

TapeLine sideWaistToHip() {
    std::vector<QPointF> points;
    for (const double height : {figure::kWaist, 100.0, figure::kHighHip, 90.0, figure::kHip}) {
        points.emplace_back(halfWidthAt(height), height);
    }
    return length(FigureView::front, points);
}

std::optional<TapeLine> girthLine(Measurement id) {
    using enum Measurement;
    switch (id) {
        case bustGirth:
            return girth(figure::kBust);
        case underBustGirth:
            return girth(figure::kUnderBust);
        case upperChestGirth:
            return girth(figure::kArmpit);
        case waistGirth:
            return girth(figure::kWaist);
        case topHipGirth:
            return girth(figure::kHighHip);
        case hipGirth:
            return girth(figure::kHip);
        case neckBaseGirth:
            return ring(-6.6, 6.6, 145, 1.8);
        case upperArmGirth:
            return ring(16.6, 21.6, 124, 1.0);
        default:
            return std::nullopt;
    }
}

std::optional<TapeLine> heightLine(Measurement id) {
    using enum Measurement;
    switch (id) {
        case waistToUnderBust:
            return heightFromWaist(figure::kUnderBust);
        case waistToBust:
            return heightFromWaist(figure::kBust);
        case waistToArmpit:
            return heightFromWaist(figure::kArmpit);
        case waistToHighHip:
            return heightFromWaist(figure::kHighHip);
        case waistToHip:
            return heightFromWaist(figure::kHip);
        case Measurement::waistToLap:
            return coutil::waistToLap();
        case Measurement::stature:
            return coutil::stature();
        default:
            return std::nullopt;
    }
}

std::optional<TapeLine> frontLine(Measurement id) {
    using enum Measurement;
    switch (id) {
        case shoulderLength:
            return length(FigureView::front, {{6.8, 144.6}, {11.5, 142.4}, {17, 140.2}});
        case acrossFrontWidth:
            return length(FigureView::front, {{-15.7, 132}, {0, 131.4}, {15.7, 132}});
        case frontNeckToWaist:
            return length(FigureView::front, {{0, 143}, {0, figure::kWaist}});
        case sideNeckToBustPoint:
            return length(FigureView::front, {{6.8, 144.6}, {7.9, 134}, {8.2, 121.5}});
        case sideNeckOverBustToWaist:
            return length(FigureView::front,
                          {{6.8, 144.6}, {7.9, 134}, {8.2, 121.5}, {7.6, 113}, {7, 104.2}});
        case bustPointWidth:
            return length(FigureView::front, {{-8.2, 121.5}, {0, 121.2}, {8.2, 121.5}});
        case Measurement::sideWaistToHip:
            return coutil::sideWaistToHip();
        case frontBustArc:
            return frontArc();
        default:
            return std::nullopt;
    }
}

std::optional<TapeLine> backLine(Measurement id) {
    using enum Measurement;
    switch (id) {
        case acrossBackWidth:
            return length(FigureView::back, {{-15.9, 132}, {0, 131.4}, {15.9, 132}});
        case Measurement::scyeDepth:
            return coutil::scyeDepth();
        case backNeckToWaist:
            return length(FigureView::back, {{0, 146}, {0, figure::kWaist}});
        default:
            return std::nullopt;
    }
}

}  // namespace

TapeLine tapeLineOf(Measurement id) {
    for (const auto lineOf : {girthLine, heightLine, frontLine, backLine}) {
        if (auto line = lineOf(id)) return *std::move(line);
    }
    return {};
}

}  // namespace coutil
