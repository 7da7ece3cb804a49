#pragma once

#include <optional>
#include <vector>

#include "core/geometry/piece_contacts.h"

namespace coutil {

// A parameter on each of two pieces.
struct ParameterPair {
    double first = 0;
    double second = 0;
};

// The crossing Newton's method reaches from a guess; may lie outside 0..1. Nothing if it does not
// settle within a few steps.
[[nodiscard]] std::optional<ParameterPair> crossingNear(const Cubic& first, const Cubic& second,
                                                        const ParameterPair& guess);

// Both parameters moved into 0..1, if that moves neither point further than
// tolerance::kTouchMm.
[[nodiscard]] std::optional<ParameterPair> insideBoth(const Cubic& first, const Cubic& second,
                                                      const ParameterPair& pair);

// Rough contacts of thin, nearly parallel parts, in any order, made into exact places and
// stretches.
[[nodiscard]] std::vector<PieceContact> refined(const Cubic& first, const Cubic& second,
                                                std::vector<PieceContact> rough);

}  // namespace coutil
