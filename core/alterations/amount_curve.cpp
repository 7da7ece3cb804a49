#include "core/alterations/amount_curve.h"

#include <algorithm>

namespace coutil {
namespace {

std::vector<AmountAt> addedAtOnePosition(std::vector<AmountAt> readings) {
    std::ranges::stable_sort(readings, {}, &AmountAt::positionMm);
    std::vector<AmountAt> added;
    for (const AmountAt& reading : readings) {
        if (!added.empty() && added.back().positionMm == reading.positionMm) {
            added.back().amountMm += reading.amountMm;
        } else {
            added.push_back(reading);
        }
    }
    return added;
}

}  // namespace

AmountCurve::AmountCurve(std::vector<AmountAt> readings, const Fade& up, const Fade& down)
    : knots_(addedAtOnePosition(std::move(readings))) {
    if (up.overMm) {
        highestMm_ = knots_.back().positionMm + *up.overMm;
        knots_.push_back({highestMm_, 0});
    }
    if (down.overMm) {
        lowestMm_ = knots_.front().positionMm - *down.overMm;
        knots_.insert(knots_.begin(), {lowestMm_, 0});
    }
    for (const AmountAt& knot : knots_) line_.add(knot.positionMm, knot.amountMm);
}

double AmountCurve::at(double positionMm) const {
    return line_.at(positionMm, LineEnd::level, LineEnd::level).y;
}

double AmountCurve::slopeAt(double positionMm) const {
    return line_.at(positionMm, LineEnd::level, LineEnd::level).slope;
}

bool AmountCurve::isOppositeOf(const AmountCurve& other) const {
    return lowestMm_ == other.lowestMm_ && highestMm_ == other.highestMm_ &&
           std::ranges::equal(knots_, other.knots_, [](const AmountAt& a, const AmountAt& b) {
               return a.positionMm == b.positionMm && a.amountMm == -b.amountMm;
           });
}

void EdgeShift::add(double part, const AmountCurve& curve) {
    const auto opposite = std::ranges::find_if(terms_, [&](const Term& term) {
        return term.part == part && term.curve.isOppositeOf(curve);
    });
    if (opposite != terms_.end()) {
        terms_.erase(opposite);
    } else if (part != 0 && std::ranges::any_of(curve.knots(), [](const AmountAt& knot) {
                   return knot.amountMm != 0;
               })) {
        terms_.push_back({part, curve});
    }
}

double EdgeShift::at(double positionMm) const {
    double sum = 0;
    for (const Term& term : terms_) sum += term.part * term.curve.at(positionMm);
    return sum;
}

double EdgeShift::slopeAt(double positionMm) const {
    double sum = 0;
    for (const Term& term : terms_) sum += term.part * term.curve.slopeAt(positionMm);
    return sum;
}

bool EdgeShift::isNothingBetween(double lowMm, double highMm) const {
    return std::ranges::none_of(terms_, [&](const Term& term) {
        return term.curve.lowestMm() < highMm && term.curve.highestMm() > lowMm;
    });
}

std::vector<double> EdgeShift::knotPositions() const {
    std::vector<double> positions;
    for (const Term& term : terms_)
        for (const AmountAt& knot : term.curve.knots()) positions.push_back(knot.positionMm);
    std::ranges::sort(positions);
    return positions;
}

}  // namespace coutil
