#include "core/comparison/largest_amount.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/displacement.h"
#include "core/geometry/measured_chain.h"
#include "core/geometry/tolerances.h"

namespace coutil::comparison {
namespace {

constexpr double kStationMm = 4;
// Half the stretch over which the direction of an edge is taken from its chords.
constexpr double kDirectionMm = 1;

// An edge ready to be asked what it takes in at a seam position.
class PreparedEdge {
  public:
    explicit PreparedEdge(const MovedEdge& edge)
        : edge_(*edge.inA),
          chain_(edge.inA->path, tolerance::kCutFlatnessMm),
          moved_(edge.shiftOfB == Vector::Zero()
                     ? edge.inB->path
                     : placed(edge.inB->path, Placement{.shift = edge.shiftOfB})),
          isSame_(edge.inA->path == edge.inB->path && edge.shiftOfB == Vector::Zero()) {}

    [[nodiscard]] double lowestMm() const { return -seamLengthsOf(edge_).belowWaistMm; }
    [[nodiscard]] double highestMm() const { return seamLengthsOf(edge_).aboveWaistMm; }

    [[nodiscard]] std::optional<double> takenInMm(double positionMm) const {
        if (isSame_) return 0.0;
        const double fromStartMm = *edge_.waistMarkAtMm + (edge_.runsUp ? positionMm : -positionMm);
        const Vector along =
            (chain_.at(fromStartMm + kDirectionMm) - chain_.at(fromStartMm - kDirectionMm))
                .normalized();
        // Outlines run counter-clockwise: outside is on the right.
        const auto outMm = moved_.alongMm(chain_.at(fromStartMm), {along.y(), -along.x()});
        if (!outMm) return std::nullopt;
        return -*outMm;
    }

  private:
    const Edge& edge_;
    MeasuredChain chain_;
    DisplacedPath moved_;
    bool isSame_;
};

std::optional<PreparedEdge> prepared(const MovedEdge& edge) {
    if (edge.inA == nullptr || edge.inB == nullptr || !edge.inA->waistMarkAtMm) return std::nullopt;
    if (edge.inA->path.isEmpty() || edge.inB->path.isEmpty()) return std::nullopt;
    return PreparedEdge(edge);
}

class Across {
  public:
    Across(const MovedEdge& inFront, const MovedEdge& behind)
        : inFront_(prepared(inFront)), behind_(prepared(behind)) {}

    [[nodiscard]] bool isEmpty() const { return !inFront_ && !behind_; }
    [[nodiscard]] double lowestMm() const {
        return std::max(inFront_ ? inFront_->lowestMm() : behind_->lowestMm(),
                        behind_ ? behind_->lowestMm() : inFront_->lowestMm());
    }
    [[nodiscard]] double highestMm() const {
        return std::min(inFront_ ? inFront_->highestMm() : behind_->highestMm(),
                        behind_ ? behind_->highestMm() : inFront_->highestMm());
    }

    [[nodiscard]] std::optional<double> amountMm(double positionMm) const {
        double sumMm = 0;
        for (const auto* edge : {&inFront_, &behind_}) {
            if (!*edge) continue;
            const auto partMm = (*edge)->takenInMm(positionMm);
            if (!partMm) return std::nullopt;
            sumMm += *partMm;
        }
        return sumMm;
    }

  private:
    std::optional<PreparedEdge> inFront_;
    std::optional<PreparedEdge> behind_;
};

// Towards the largest amount between the neighbours of a station, by halving steps.
SeamAmount refined(const Across& across, SeamAmount best) {
    for (double stepMm = kStationMm / 2; stepMm > tolerance::kCompareSearchMm; stepMm /= 2) {
        const double middleMm = best.positionMm;
        for (const double positionMm : {middleMm - stepMm, middleMm + stepMm}) {
            if (positionMm < across.lowestMm() || positionMm > across.highestMm()) continue;
            const auto amountMm = across.amountMm(positionMm);
            if (amountMm && std::abs(*amountMm) > std::abs(best.amountMm))
                best = {positionMm, *amountMm};
        }
    }
    return best;
}

}  // namespace

std::optional<SeamAmount> largestAmount(const MovedEdge& inFront, const MovedEdge& behind) {
    const Across across(inFront, behind);
    if (across.isEmpty()) return std::nullopt;
    const double lowestMm = across.lowestMm();
    const double highestMm = across.highestMm();
    const int count = std::max(1, static_cast<int>(std::ceil((highestMm - lowestMm) / kStationMm)));
    std::optional<SeamAmount> best;
    for (int i = 0; i <= count; ++i) {
        const double positionMm = lowestMm + (highestMm - lowestMm) * i / count;
        const auto amountMm = across.amountMm(positionMm);
        if (amountMm && (!best || std::abs(*amountMm) > std::abs(best->amountMm)))
            best = SeamAmount{positionMm, *amountMm};
    }
    if (!best || best->amountMm == 0) return best ? std::optional(SeamAmount{}) : best;
    return refined(across, *best);
}

}  // namespace coutil::comparison
