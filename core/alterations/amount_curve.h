#pragma once

#include <limits>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/block/monotone_line.h"

namespace coutil {

// The amount a(s) along a seam, mm against the seam position in mm. It goes through every reading
// (readings at one position add), is monotone between them so that it never overshoots one, has a
// continuous first derivative, and beyond the outermost readings fades to nothing or is carried on.
class AmountCurve {
  public:
    // At least one reading, all numbers finite, fades above 0; any order.
    AmountCurve(std::vector<AmountAt> readings, const Fade& up, const Fade& down);

    [[nodiscard]] double at(double positionMm) const;
    [[nodiscard]] double slopeAt(double positionMm) const;

    // Outside these positions the amount is nothing; infinite where it is carried on.
    [[nodiscard]] double lowestMm() const { return lowestMm_; }
    [[nodiscard]] double highestMm() const { return highestMm_; }

    // Readings and fade ends, ascending: the curve is one cubic between neighbours.
    [[nodiscard]] const std::vector<AmountAt>& knots() const { return knots_; }

    // True for the curve with every amount the other way round.
    [[nodiscard]] bool isOppositeOf(const AmountCurve& other) const;

  private:
    std::vector<AmountAt> knots_;
    double lowestMm_ = -std::numeric_limits<double>::infinity();
    double highestMm_ = std::numeric_limits<double>::infinity();
    MonotoneLine line_;
};

// By how much one edge moves into its panel, mm against the seam position: parts of one or more
// amount curves. An amount and its opposite leave nothing, exactly.
class EdgeShift {
  public:
    void add(double part, const AmountCurve& curve);

    [[nodiscard]] double at(double positionMm) const;
    [[nodiscard]] double slopeAt(double positionMm) const;
    [[nodiscard]] bool isNothing() const { return terms_.empty(); }
    [[nodiscard]] bool isNothingBetween(double lowMm, double highMm) const;
    [[nodiscard]] std::vector<double> knotPositions() const;  // ascending

  private:
    struct Term {
        double part = 0;
        AmountCurve curve;
    };
    std::vector<Term> terms_;
};

}  // namespace coutil
