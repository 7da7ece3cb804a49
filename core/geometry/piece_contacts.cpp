#include "core/geometry/piece_contacts.h"

#include <algorithm>

#include "core/geometry/closest_on_piece.h"
#include "core/geometry/contact_refinement.h"
#include "core/geometry/piece_part.h"
#include "core/geometry/shared_stretch.h"
#include "core/geometry/tolerances.h"

// Both pieces are halved, and pairs of parts that cannot meet dropped: by the boxes of their
// control points, then by the slabs along their chords, which shrink with the square of the part.
// Where no chords are parallel there is at most one crossing, and Newton's method finds it. Nearly
// parallel parts thinner than a touch may be within a touch for a while; refined() makes of such
// stretches what they are.
namespace coutil {

namespace {

class ContactSearch {
  public:
    ContactSearch(const Cubic& first, const Cubic& second) : first_(first), second_(second) {}

    std::vector<PieceContact> run() {
        visit({first_}, {second_});
        if (shared_) return {*shared_};
        return refined(first_, second_, std::move(found_));
    }

  private:
    // More pairs than any ordinary crossing takes: time to ask whether the curves are one.
    static constexpr int kManyPairs = 200;
    // A bound on the work for pieces made to be nasty.
    static constexpr int kMostPairs = 50'000;

    void visit(const PiecePart& a, const PiecePart& b) {
        if (shared_ || ++pairs_ > kMostPairs || cannotMeet(a, b)) return;
        if (pairs_ >= kManyPairs && !isAsked_) {
            isAsked_ = true;
            shared_ = sharedStretch(first_, second_);
            if (shared_) return;
        }
        if (areNearlyParallel(a, b) && isThin(a) && isThin(b)) {
            takeNearStretch(a, b);
        } else if (!areTransversal(a, b) || !takeCrossing(a, b)) {
            goOn(a, b);
        }
    }

    void goOn(const PiecePart& a, const PiecePart& b) {
        const double extentA = extentMm(a);
        const double extentB = extentMm(b);
        if (std::max(extentA, extentB) < tolerance::kTouchMm) {
            found_.push_back({a.t0, a.t1, b.t0, b.t1});
        } else if (extentA >= extentB) {
            const auto [left, right] = halvesOf(a);
            visit(left, b);
            visit(right, b);
        } else {
            const auto [left, right] = halvesOf(b);
            visit(a, left);
            visit(a, right);
        }
    }

    // True if the one crossing was found inside both parts. A result outside proves nothing:
    // halving goes on, and the slabs soon drop parts that do not meet.
    bool takeCrossing(const PiecePart& a, const PiecePart& b) {
        const ParameterPair middle{a.t0 + (a.t1 - a.t0) / 2, b.t0 + (b.t1 - b.t0) / 2};
        const auto crossing = crossingNear(first_, second_, middle);
        if (!crossing) return false;
        const auto inside = insideBoth(first_, second_, *crossing);
        constexpr double kSlack = tolerance::kSettledStep;
        if (!inside || inside->first < a.t0 - kSlack || inside->first > a.t1 + kSlack ||
            inside->second < b.t0 - kSlack || inside->second > b.t1 + kSlack) {
            return false;
        }
        found_.push_back({inside->first, inside->first, inside->second, inside->second});
        return true;
    }

    void takeNearStretch(const PiecePart& a, const PiecePart& b) {
        const auto stretch = nearStretch(a, b);
        if (!stretch) return;
        PieceContact contact;
        contact.firstStart = closestParameter(first_, stretch->first);
        contact.firstEnd = std::max(contact.firstStart, closestParameter(first_, stretch->second));
        contact.secondStart = closestParameter(second_, stretch->first);
        contact.secondEnd = closestParameter(second_, stretch->second);
        found_.push_back(contact);
    }

    const Cubic& first_;
    const Cubic& second_;
    std::vector<PieceContact> found_;
    std::optional<PieceContact> shared_;
    int pairs_ = 0;
    bool isAsked_ = false;  // whether they share a stretch
};

bool isFinite(const Cubic& c) {
    return c.p0.allFinite() && c.p1.allFinite() && c.p2.allFinite() && c.p3.allFinite();
}

}  // namespace

std::vector<PieceContact> contactsOf(const Cubic& first, const Cubic& second) {
    if (!isFinite(first) || !isFinite(second)) return {};
    return ContactSearch(first, second).run();
}

}  // namespace coutil
