#include "core/geometry/piece_contacts.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/closest_on_piece.h"
#include "core/geometry/contact_refinement.h"
#include "core/geometry/cross_product.h"
#include "core/geometry/shared_stretch.h"
#include "core/geometry/tolerances.h"

// Both pieces are halved, and pairs of parts that cannot meet dropped: by the boxes of their
// control points, then by the slabs along their chords, which shrink with the square of the part.
// Where no leg of one control polygon is parallel to one of the other there is at most one
// crossing, and Newton's method finds it. Parts that became as thin as a touch without getting
// there run along each other; refined() sorts those out.
namespace coutil {

namespace {

struct Part {
    Cubic c;
    double t0 = 0;
    double t1 = 1;

    [[nodiscard]] std::array<const Point*, 4> points() const {
        return {&c.p0, &c.p1, &c.p2, &c.p3};
    }
    [[nodiscard]] std::array<Vector, 3> legs() const {
        return {c.p1 - c.p0, c.p2 - c.p1, c.p3 - c.p2};
    }
};

struct Range {
    double low = 0;
    double high = 0;
};

Range rangeAlong(const Part& part, const Point& origin, const Vector& direction) {
    Range range{1e300, -1e300};
    for (const Point* p : part.points()) {
        const double along = direction.dot(*p - origin);
        range = {std::min(range.low, along), std::max(range.high, along)};
    }
    return range;
}

bool areApart(const Range& a, const Range& b) {
    return a.low > b.high + tolerance::kTouchMm || b.low > a.high + tolerance::kTouchMm;
}

double extentMm(const Part& part) {
    const Box box = controlBoxOf(part.c);
    return std::max(box.widthMm(), box.heightMm());
}

std::pair<Part, Part> halves(const Part& part) {
    auto [left, right] = splitAt(part.c, 0.5);
    const double middle = part.t0 + (part.t1 - part.t0) / 2;
    return {{left, part.t0, middle}, {right, middle, part.t1}};
}

// The part's chord direction and left normal; zero for a part that closes on itself.
struct Frame {
    Vector along;
    Vector across;
};

Frame frameOf(const Part& part) {
    const Vector chord = part.c.p3 - part.c.p0;
    const double length = chord.norm();
    if (length == 0) return {Vector::Zero(), Vector::Zero()};
    return {chord / length, Vector(-chord.y(), chord.x()) / length};
}

// At most one crossing: all cross products of legs have one sign, so no chord of one part is
// parallel to a chord of the other.
bool areTransversal(const Part& a, const Part& b) {
    constexpr double kLeast = tolerance::kParallelSine * tolerance::kParallelSine;
    int sign = 0;
    for (const Vector& legA : a.legs()) {
        if (legA.isZero(0)) continue;
        for (const Vector& legB : b.legs()) {
            if (legB.isZero(0)) continue;
            const double cross = crossProduct(legA, legB);
            if (cross * cross <= kLeast * legA.squaredNorm() * legB.squaredNorm()) return false;
            if (sign != 0 && (cross > 0) != (sign > 0)) return false;
            sign = cross > 0 ? 1 : -1;
        }
    }
    return sign != 0;
}

class Search {
  public:
    Search(const Cubic& first, const Cubic& second) : first_(first), second_(second) {}

    std::vector<PieceContact> run() {
        visit({first_}, {second_});
        auto found = refined(first_, second_, std::move(rough_));
        found.insert(found.end(), places_.begin(), places_.end());
        std::sort(found.begin(), found.end(), [](const PieceContact& a, const PieceContact& b) {
            return a.firstStart < b.firstStart;
        });
        return found;
    }

  private:
    // More pairs than any ordinary crossing takes: time to ask whether the curves are one.
    static constexpr int kManyPairs = 200;
    // A bound on the work for pieces made to be nasty.
    static constexpr int kMostPairs = 50'000;

    void visit(const Part& a, const Part& b) {
        if (isFinished_ || ++pairs_ > kMostPairs || cannotMeet(a, b)) return;
        if (pairs_ == kManyPairs) {
            if (const auto shared = sharedStretch(first_, second_)) {
                places_ = {*shared};
                rough_.clear();
                isFinished_ = true;
                return;
            }
        }
        if (areTransversal(a, b)) {
            if (takeCrossing(a, b)) return;
        } else if (takeThinParts(a, b)) {
            return;
        }
        splitFurther(a, b);
    }

    void splitFurther(const Part& a, const Part& b) {
        const double extentA = extentMm(a);
        const double extentB = extentMm(b);
        if (std::max(extentA, extentB) < tolerance::kTouchMm) {
            rough_.push_back({a.t0, a.t1, b.t0, b.t1});
        } else if (extentA >= extentB) {
            const auto [left, right] = halves(a);
            visit(left, b);
            visit(right, b);
        } else {
            const auto [left, right] = halves(b);
            visit(a, left);
            visit(a, right);
        }
    }

    static bool cannotMeet(const Part& a, const Part& b) {
        const Box boxA = controlBoxOf(a.c);
        const Box boxB = controlBoxOf(b.c);
        for (const int axis : {0, 1}) {
            if (areApart({boxA.lowest[axis], boxA.highest[axis]},
                         {boxB.lowest[axis], boxB.highest[axis]})) {
                return true;
            }
        }
        for (const Vector& across : {frameOf(a).across, frameOf(b).across}) {
            if (areApart(rangeAlong(a, a.c.p0, across), rangeAlong(b, a.c.p0, across))) return true;
        }
        return false;
    }

    // True if the one crossing was found inside both parts. A result outside proves nothing:
    // halving goes on, and the slabs soon drop parts that do not meet.
    bool takeCrossing(const Part& a, const Part& b) {
        const auto found =
            crossingNear(first_, second_, {a.t0 + (a.t1 - a.t0) / 2, b.t0 + (b.t1 - b.t0) / 2});
        if (!found) return false;
        const auto inside = insideBoth(first_, second_, *found);
        constexpr double kSlack = tolerance::kSettledStep;
        if (!inside || inside->first < a.t0 - kSlack || inside->first > a.t1 + kSlack ||
            inside->second < b.t0 - kSlack || inside->second > b.t1 + kSlack) {
            return false;
        }
        places_.push_back({inside->first, inside->first, inside->second, inside->second});
        return true;
    }

    // True if both parts are no thicker than a tenth of a touch, go forward along their chords and
    // lie in one slab; where they are within a touch of each other is then noted.
    bool takeThinParts(const Part& a, const Part& b) {
        if (!isThin(a) || !isThin(b)) return false;
        const Frame frame = frameOf(a);
        const Range across = rangeAlong(b, a.c.p0, frame.across);
        if (across.high - across.low > tolerance::kTouchMm) return false;
        const double lengthA = frame.along.dot(a.c.p3 - a.c.p0);
        double b0 = frame.along.dot(b.c.p0 - a.c.p0);
        double b1 = frame.along.dot(b.c.p3 - a.c.p0);
        if (b0 > b1) std::swap(b0, b1);
        const double start = std::max(0.0, b0);
        const double end = std::min(lengthA, b1);
        if (start > end + tolerance::kTouchMm) return true;
        noteIfNear(a.c.p0 + frame.along * start, a.c.p0 + frame.along * std::max(start, end));
        return true;
    }

    static bool isThin(const Part& part) {
        const Frame frame = frameOf(part);
        if (frame.along.isZero(0)) return false;
        const Range across = rangeAlong(part, part.c.p0, frame.across);
        if (across.high - across.low > tolerance::kTouchMm / 10) return false;
        return std::all_of(part.legs().begin(), part.legs().end(),
                           [&](const Vector& leg) { return leg.dot(frame.along) >= 0; });
    }

    void noteIfNear(const Point& start, const Point& end) {
        PieceContact contact;
        contact.firstStart = closestParameter(first_, start);
        contact.firstEnd = std::max(contact.firstStart, closestParameter(first_, end));
        contact.secondStart = closestParameter(second_, pointAt(first_, contact.firstStart));
        contact.secondEnd = closestParameter(second_, pointAt(first_, contact.firstEnd));
        const double middle = (contact.firstStart + contact.firstEnd) / 2;
        const Point between = pointAt(first_, middle);
        const double gap = (pointAt(second_, closestParameter(second_, between)) - between).norm();
        if (gap <= tolerance::kTouchMm) rough_.push_back(contact);
    }

    const Cubic& first_;
    const Cubic& second_;
    std::vector<PieceContact> places_;
    std::vector<PieceContact> rough_;
    int pairs_ = 0;
    bool isFinished_ = false;
};

}  // namespace

std::vector<PieceContact> contactsOf(const Cubic& first, const Cubic& second) {
    return Search(first, second).run();
}

}  // namespace coutil
