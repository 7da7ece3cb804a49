#pragma once

#include <cmath>
#include <string>
#include <utility>

#include "core/alterations/alteration_kinds.h"

namespace coutil {

// What a kind says of itself when it does not fit: `subject` its key, `detail` the culprit.
[[nodiscard]] inline Problems unfit(std::string kind, std::string what) {
    return {{.code = ProblemCode::alterationUnfit,
             .subject = std::move(kind),
             .detail = std::move(what)}};
}
[[nodiscard]] inline Problems badValue(std::string kind, std::string what) {
    return {{.code = ProblemCode::alterationBadValue,
             .subject = std::move(kind),
             .detail = std::move(what)}};
}
[[nodiscard]] inline Problems tooLarge(std::string kind, std::string what, double valueMm,
                                       double limitMm) {
    return {{.code = ProblemCode::alterationTooLarge,
             .subject = std::move(kind),
             .detail = std::move(what),
             .figures = {{"value", valueMm}, {"limit", limitMm}}}};
}
[[nodiscard]] inline Problems breaksPanel(std::string kind, std::string what, std::string panel) {
    return {{.code = ProblemCode::alterationBreaksPanel,
             .subject = std::move(kind),
             .detail = std::move(what),
             .panel = std::move(panel)}};
}

// Beyond this (mm) a figure was mistyped; NaN and infinity are too.
[[nodiscard]] inline bool isSoundMm(double mm) { return std::isfinite(mm) && std::abs(mm) <= 1000; }

}  // namespace coutil
