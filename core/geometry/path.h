#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/cubic.h"

namespace coutil {

// An open or closed chain of cubic pieces, end to end. Never holds a gap: each piece starts where
// the one before ends. A path may be empty; functions below want at least one piece unless they say
// so.
struct Path {
    std::vector<Cubic> pieces{};

    bool operator==(const Path&) const = default;
    [[nodiscard]] bool isEmpty() const { return pieces.empty(); }
    [[nodiscard]] const Point& start() const { return pieces.front().p0; }
    [[nodiscard]] const Point& end() const { return pieces.back().p3; }
};

// A place on a path: which piece, and the parameter 0..1 on it.
struct PathPosition {
    std::size_t piece = 0;
    double t = 0;
};

// What closestOn() finds: where on the path, the point there, and how far it is (mm, not signed).
struct ClosestPlace {
    PathPosition position;
    Point point = Point::Zero();
    double distanceMm = 0;
};

// Where two paths meet.
struct Meeting {
    PathPosition onFirst;
    PathPosition onSecond;
    Point point = Point::Zero();
};

// A 2 x 3 placement: turn about the origin (and mirror in the y axis first, if asked), then shift.
struct Placement {
    double turnRad = 0;
    Vector shift = Vector::Zero();
    bool isMirrored = false;

    bool operator==(const Placement&) const = default;
};

[[nodiscard]] Path straightPath(const Point& a, const Point& b);
[[nodiscard]] Path polylinePath(const std::vector<Point>& points);

[[nodiscard]] Point pointAt(const Path& path, const PathPosition& position);
[[nodiscard]] Vector tangentAt(const Path& path, const PathPosition& position);  // unit length
[[nodiscard]] double curvaturePerMmAt(const Path& path, const PathPosition& position);

// Length of the whole path, or from its start to a position, in mm; error below 1e-6 mm per piece.
[[nodiscard]] double lengthMm(const Path& path);
[[nodiscard]] double lengthToMm(const Path& path, const PathPosition& position);

// The position at a length from the start; clamped to the ends. Error below 1e-9 mm along the path.
[[nodiscard]] PathPosition positionAtLength(const Path& path, double fromStartMm);
[[nodiscard]] Point pointAtLength(const Path& path, double fromStartMm);

// The part between two positions (first not after second), or between two lengths from the start in
// mm.
[[nodiscard]] Path between(const Path& path, const PathPosition& first, const PathPosition& second);
[[nodiscard]] Path betweenLengths(const Path& path, double firstMm, double secondMm);

[[nodiscard]] Path reversed(const Path& path);
[[nodiscard]] Path joined(const Path& first,
                          const Path& second);  // second must start where first ends
[[nodiscard]] Path placed(const Path& path, const Placement& placement);
[[nodiscard]] Point placed(const Point& point, const Placement& placement);
[[nodiscard]] Box boundsOf(const Path& path);

// The nearest place on the path, error below 1e-6 mm.
[[nodiscard]] ClosestPlace closestOn(const Path& path, const Point& point);

// All crossings and touchings of two paths, ordered along the first; error below 1e-6 mm. Curves
// nearer than tolerance::kTouchMm touch: two crossings that close give one place, and where curves
// part very slowly (equal curvature) the place is only good to the stretch on which they touch.
// Stretches that run along each other give their end points. The closing point of a closed path is
// its start and its end, so it is given twice.
[[nodiscard]] std::vector<Meeting> meetingsOf(const Path& first, const Path& second);

// Places where the path crosses or touches the level line y = heightMm, ordered along the path. A
// piece that lies on the level gives its two ends. An end within tolerance::kOnLevelMm is on it; a
// joint counts once. Error below 1e-9 mm in height.
[[nodiscard]] std::vector<PathPosition> crossingsAtHeight(const Path& path, double heightMm);

// Points along the path, first and last included, such that the chain of chords leaves the curve by
// at most toleranceMm.
[[nodiscard]] std::vector<Point> flattened(const Path& path, double toleranceMm);

// Signed area under closing the path by a chord, mm2, positive counter-clockwise; exact for cubics.
[[nodiscard]] double signedAreaMm2(const Path& path);

// A smooth path through all points (at least two), chord-length parametrised, continuous in
// curvature inside, with the given end directions (unit length; a zero vector leaves that end
// free: its piece is a parabola). Points nearer than tolerance::kSamePointMm to the one before are
// left out.
[[nodiscard]] Path fittedThrough(const std::vector<Point>& points, const Vector& startDirection,
                                 const Vector& endDirection);

// Few cubic pieces that stay within toleranceMm of the chain of points, keeping corners sharper
// than cornerRad as corners; elsewhere pieces follow each other in one direction unless the chain
// itself is coarser than the tolerance. Empty for fewer than two different points. Used when a
// polyline has to leave the program as curves.
[[nodiscard]] Path fittedTo(const std::vector<Point>& points, double toleranceMm, double cornerRad);

}  // namespace coutil
