#include "core/geometry/offset_check.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "core/geometry/prepared_chain.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

constexpr double kSlack = tolerance::kOffsetMm;

Problem faultAt(ProblemCode code, const Point& at, double foundMm, double askedMm) {
    Problem fault{code, Severity::error, {}, {}, {}, at, {}};
    fault.figures = {{"value", foundMm, FigureUnit::millimetre},
                     {"limit", askedMm, FigureUnit::millimetre}};
    return fault;
}

std::vector<Point> closedUp(std::vector<Point> points) {
    points.push_back(points.front());
    return points;
}

// One verification: the sewing line and the cutting line prepared for questions.
class OffsetCheck {
  public:
    OffsetCheck(const std::vector<OffsetChain>& chains, const std::vector<CornerZone>& corners,
                const std::vector<Point>& outline)
        : chains_(chains), corners_(corners), outline_(outline), cutting_(closedUp(outline)) {
        for (const OffsetChain& chain : chains) sewing_.emplace_back(chain.feet);
    }

    std::vector<Problem> problems() {
        checkCuttingPoints();
        for (const OffsetChain& chain : chains_) checkSewingPoints(chain);
        std::vector<Problem> all;
        if (tooNear_) all.push_back(*tooNear_);
        if (tooFar_) all.push_back(*tooFar_);
        for (const OffsetChain& chain : chains_) appendLostParts(chain, all);
        return all;
    }

  private:
    bool isInCornerZone(const Point& p) const {
        return std::any_of(corners_.begin(), corners_.end(), [&](const CornerZone& corner) {
            return (p - corner.at).norm() <= corner.reachMm + kSlack;
        });
    }

    void noteTooNear(const Point& at, double foundMm, double askedMm) {
        if (!tooNear_) tooNear_ = faultAt(ProblemCode::offsetTooNear, at, foundMm, askedMm);
    }

    // Whether p and its nearest place on the sewing line see each other; otherwise the panel lies
    // between them and it is another edge that p belongs to.
    bool isInSight(const Point& p, const Point& place) const {
        const Point justOff = place + tolerance::kBuriedMm * (p - place).normalized();
        return std::none_of(sewing_.begin(), sewing_.end(),
                            [&](const PreparedChain& chain) { return chain.parts(p, justOff); });
    }

    // Outside corner zones every point of the cutting line has all edges at their width or farther,
    // and one at its width.
    void checkCuttingPoint(const Point& p) {
        if (isInCornerZone(p)) return;
        bool isAtItsWidth = false;
        for (std::size_t k = 0; k < chains_.size(); ++k) {
            const double width = chains_[k].widthMm;
            const auto place = sewing_[k].nearestWithOnRight(p, kSlack, width + kSlack);
            if (!place) continue;
            const double found = (p - *place).norm();
            if (found >= width - kSlack) {
                isAtItsWidth = true;
            } else if (isInSight(p, *place)) {
                noteTooNear(p, found, width);
            }
        }
        if (!isAtItsWidth && !tooFar_) noteTooFar(p);
    }

    void noteTooFar(const Point& p) {
        constexpr double kAnyDistanceMm = 1e6;
        double found = kAnyDistanceMm;
        double asked = 0;
        for (std::size_t k = 0; k < chains_.size(); ++k) {
            const auto place = sewing_[k].nearest(p, kAnyDistanceMm);
            const double width = chains_[k].widthMm;
            if (!place || (p - *place).norm() - width >= found - asked) continue;
            found = (p - *place).norm();
            asked = width;
        }
        tooFar_ = faultAt(ProblemCode::offsetTooFar, p, found, asked);
    }

    void checkCuttingPoints() {
        for (std::size_t k = 0; k < outline_.size(); ++k) {
            const Point& p = outline_[k];
            checkCuttingPoint(p);
            checkCuttingPoint((p + outline_[(k + 1) % outline_.size()]) / 2);
        }
    }

    // The least distance between two chains of points is at a point of one of them, so the other
    // half of "never nearer" is asked from the sewing line. It also has to lie inside.
    void checkSewingPoints(const OffsetChain& chain) {
        for (std::size_t k = 0; k < chain.feet.size(); ++k) {
            const Point& foot = chain.feet[k];
            const auto nearest = cutting_.nearest(foot, std::max(chain.widthMm, kSlack));
            const double found = nearest ? (*nearest - foot).norm() : chain.widthMm;
            if ((!nearest || found > kSlack) && !cutting_.encloses(foot)) {
                noteTooNear(foot, -found, chain.widthMm);
            }
            if (nearest && found < chain.widthMm - kSlack) checkCuttingPoint(*nearest);
        }
    }

    // Whether a point of a chain's offset is covered by the allowance of another stretch.
    bool isBuried(const Point& p) {
        for (std::size_t k = 0; k < chains_.size(); ++k) {
            const double deep = chains_[k].widthMm - tolerance::kBuriedMm;
            if (deep <= 0) continue;
            const auto place = sewing_[k].nearestWithOnRight(p, 0, deep);
            if (place && isInSight(p, *place)) return true;
        }
        return false;
    }

    // Near a corner neighbours cover each other's ends; only what lies farther off is lost.
    bool isNearCorner(const Point& p) const {
        return std::any_of(corners_.begin(), corners_.end(), [&](const CornerZone& corner) {
            return (p - corner.at).norm() <= corner.sharedMm + kSlack;
        });
    }

    // Whether the part of a chain from share s on the side k has no cutting line of its own.
    bool isLost(const OffsetChain& chain, std::size_t k, double s) {
        if (runsBackwards(chain, k)) return true;
        const Point p = chain.points[k] + s * (chain.points[k + 1] - chain.points[k]);
        return !isNearCorner(p) && isBuried(p);
    }

    void appendLostParts(const OffsetChain& chain, std::vector<Problem>& all) {
        if (chain.widthMm == 0) return;
        double lostMm = 0;
        Point at = chain.feet.front();
        const auto finish = [&] {
            if (lostMm > tolerance::kLostStretchMm) {
                Problem lost{ProblemCode::offsetLostPart, Severity::warning, {}, {}, {}, at, {}};
                lost.figures = {{"value", lostMm, FigureUnit::millimetre}};
                all.push_back(lost);
            }
            lostMm = 0;
        };
        for (std::size_t k = 0; k + 1 < chain.feet.size(); ++k) {
            const Vector along = chain.feet[k + 1] - chain.feet[k];
            const double length = along.norm();
            const int parts = 1 + static_cast<int>(length / kLostSearchStepMm);
            for (int part = 0; part < parts; ++part) {
                const double s = (part + 0.5) / parts;
                if (!isLost(chain, k, s)) {
                    finish();
                    continue;
                }
                if (lostMm == 0) at = chain.feet[k] + s * along;
                lostMm += length / parts;
            }
        }
        finish();
    }

    static constexpr double kLostSearchStepMm = 10;

    const std::vector<OffsetChain>& chains_;
    const std::vector<CornerZone>& corners_;
    const std::vector<Point>& outline_;
    PreparedChain cutting_;
    std::vector<PreparedChain> sewing_;
    std::optional<Problem> tooNear_;
    std::optional<Problem> tooFar_;
};

}  // namespace

std::vector<Problem> checkOffset(const std::vector<OffsetChain>& chains,
                                 const std::vector<CornerZone>& corners,
                                 const std::vector<Point>& outline) {
    return OffsetCheck(chains, corners, outline).problems();
}

}  // namespace coutil
