#include "ui/benches/body_figure.h"

#include <cmath>

namespace coutil {

namespace {

using Points = std::vector<QPointF>;

Points mirrored(const Points& points) {
    Points other;
    for (const QPointF& p : points) other.emplace_back(-p.x(), p.y());
    return other;
}

// One side of the torso from the armpit down the leg; the other is its mirror image.
const Points& frontSide() {
    static const Points side{{15.7, 128},   {15.5, 125},   {15.3, 121.5}, {14.3, 117},
                             {13.2, 113.5}, {12.1, 108.5}, {11.6, 104.5}, {12.5, 100},
                             {15.1, 95.5},  {16.9, 90},    {17.8, 84.5},  {17.9, 80},
                             {17.2, 71},    {15.6, 60},    {12.6, 48},    {12.4, 37},
                             {9.6, 20},     {7.8, 8},      {10.4, 1.5}};
    return side;
}

// Neck, shoulder and the outside of the arm in one line.
const Points& neckToHand() {
    static const Points line{{5.0, 152.5}, {5.1, 148.5}, {6.8, 144.6}, {11.5, 142.4}, {17, 140.2},
                             {20.0, 137},  {21.3, 131},  {21.7, 122},  {22.6, 112},   {24.4, 101},
                             {26.3, 88},   {27.4, 78},   {26.9, 72.6}, {25.6, 70.6},  {24.6, 72.4}};
    return line;
}

const Points& innerArm() {
    static const Points line{{15.7, 128}, {17.2, 119}, {18.8, 109}, {21.2, 97},
                             {23.2, 87},  {23.7, 79},  {24.6, 72.4}};
    return line;
}

const Points& innerLeg() {
    static const Points line{{0, 77.5}, {1.4, 71}, {2.6, 60},  {3.6, 48},  {3.0, 37},
                             {3.6, 20}, {3.4, 8},  {3.2, 1.5}, {10.4, 1.5}};
    return line;
}

QPainterPath bothSides(const Points& points) {
    QPainterPath path = smoothThrough(points);
    path.addPath(smoothThrough(mirrored(points)));
    return path;
}

QPainterPath head() {
    QPainterPath path;
    path.addEllipse(QPointF(0, 159.2), 7.4, 10.8);
    return path;
}

QPainterPath standingOutline() {
    QPainterPath path = head();
    for (const Points* line : {&neckToHand(), &innerArm(), &frontSide(), &innerLeg()}) {
        path.addPath(bothSides(*line));
    }
    return path;
}

// Front of the body, seen from its right side: neck to waist.
const Points& sideFrontTop() {
    static const Points line{{-3.6, 150},    {-3.9, 147},    {-5.2, 143.8},  {-8.0, 136},
                             {-11.4, 128.5}, {-14.0, 122.6}, {-13.9, 119.6}, {-11.4, 115.6},
                             {-10.4, 113.5}, {-9.7, 108.5},  {-9.6, 104.5}};
    return line;
}

const Points& sideFrontBelow() {
    static const Points line{{-9.6, 104.5}, {-10.4, 99.5}, {-11.2, 94}, {-10.6, 86.5},
                             {-10, 78},     {-9.2, 66},    {-6.9, 49}};
    return line;
}

const Points& sideBackTop() {
    static const Points line{{4.4, 151}, {4.6, 147},   {6.6, 142.5}, {9.6, 134},
                             {9.9, 126}, {8.0, 114.5}, {6.2, 107.5}, {5.8, 104.5}};
    return line;
}

const Points& sideBackBelow() {
    static const Points line{{5.8, 104.5}, {6.9, 100}, {10.2, 93.5}, {12.7, 86},
                             {11.6, 79.5}, {8.9, 73},  {7.8, 64},    {5.2, 49}};
    return line;
}

QPainterPath sideHead() {
    QPainterPath path;
    path.addEllipse(QPointF(-0.6, 160), 8.6, 10.4);
    return path;
}

QPainterPath sideOutline() {
    QPainterPath path = sideHead();
    for (const Points* line :
         {&sideFrontTop(), &sideFrontBelow(), &sideBackTop(), &sideBackBelow()}) {
        path.addPath(smoothThrough(*line));
    }
    return path;
}

QPainterPath seatedOutline() {
    QPainterPath path = sideHead();
    path.addPath(smoothThrough(sideFrontTop()));
    path.addPath(smoothThrough(sideBackTop()));
    path.addPath(smoothThrough({{-9.6, 104.5},
                                {-11.2, 98},
                                {-12.6, 92.5},
                                {-16, 89.6},
                                {-30, 89},
                                {-44, 88.6},
                                {-50.5, 86},
                                {-52, 80},
                                {-49.6, 66},
                                {-48, 54}}));
    path.addPath(smoothThrough({{5.8, 104.5},
                                {8.2, 98},
                                {12.4, 90},
                                {12.8, 82},
                                {9, 76.8},
                                {0, 75.4},
                                {-20, 75.6},
                                {-38, 75.4},
                                {-42, 71},
                                {-41.6, 54}}));
    return path;
}

QPainterPath frontDetails() {
    QPainterPath path = bothSides(
        {{2.2, 118.6}, {3.6, 116.5}, {6, 115.2}, {9, 115.1}, {11.8, 116.4}, {13.5, 118.8}});
    path.addPath(bothSides({{15.7, 128}, {16.2, 131}, {17.6, 135}}));
    path.addPath(bothSides({{2.0, 143.2}, {6.5, 142.6}, {11.5, 141.2}}));
    path.addEllipse(QPointF(0, 98.4), 0.35, 0.55);
    return path;
}

QPainterPath backDetails() {
    QPainterPath path = smoothThrough({{0, 145}, {0, 130}, {0, 112}, {0, 97}});
    path.addPath(bothSides({{15.7, 128}, {16.2, 131}, {17.6, 135}}));
    path.addPath(bothSides({{4.6, 136}, {4.4, 130}, {6.6, 125.6}, {10.6, 124.6}}));
    path.addPath(bothSides({{0.6, 78.4}, {5, 76.4}, {10, 77}, {14.6, 80}}));
    path.addPath(smoothThrough({{0, 93}, {0, 86}, {0, 78}}));
    return path;
}

QPainterPath sideDetails() {
    QPainterPath path;
    path.addEllipse(QPointF(0.4, 132.6), 4.3, 6.6);
    path.addPath(smoothThrough({{-11.4, 115.6}, {-8.2, 115}, {-5.4, 117.4}, {-4.6, 121}}));
    return path;
}

}  // namespace

QPainterPath smoothThrough(const std::vector<QPointF>& points) {
    QPainterPath path(points.front());
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const QPointF& before = points[i == 0 ? 0 : i - 1];
        const QPointF& after = points[i + 2 < points.size() ? i + 2 : points.size() - 1];
        path.cubicTo(points[i] + (points[i + 1] - before) / 6,
                     points[i + 1] - (after - points[i]) / 6, points[i + 1]);
    }
    return path;
}

QPainterPath bodyOutline(FigureView view) {
    if (view == FigureView::side) return sideOutline();
    return view == FigureView::seated ? seatedOutline() : standingOutline();
}

QPainterPath bodyDetails(FigureView view) {
    switch (view) {
        case FigureView::front:
        case FigureView::whole:
            return frontDetails();
        case FigureView::back:
            return backDetails();
        case FigureView::side:
        case FigureView::seated:
            break;
    }
    return sideDetails();
}

QRectF figureFrame(FigureView view) {
    switch (view) {
        case FigureView::whole:
            return {-40, -4, 72, 180};
        case FigureView::seated:
            return {-56, 60, 76, 92};
        case FigureView::side:
            return {-28, 68, 56, 84};
        case FigureView::front:
        case FigureView::back:
            break;
    }
    return {-29, 68, 58, 84};
}

double halfWidthAt(double height) {
    const Points& side = frontSide();
    for (std::size_t i = 0; i + 1 < side.size(); ++i) {
        const QPointF& upper = side[i];
        const QPointF& lower = side[i + 1];
        if (height <= upper.y() && height >= lower.y()) {
            const double part = (upper.y() - height) / (upper.y() - lower.y());
            return upper.x() + (lower.x() - upper.x()) * part;
        }
    }
    return side.front().x();
}

}  // namespace coutil
