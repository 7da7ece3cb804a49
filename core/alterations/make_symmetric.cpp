// Left and right become one again: MakeSymmetric.
#include <utility>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/whole_pattern.h"

namespace coutil {

Problems makeSymmetric(Pattern& pattern, BodySide, const MakeSymmetric& change) {
    auto half = symmetricOf(pattern, change.from);
    if (!half) return {{.code = ProblemCode::alterationUnfit, .subject = "make_symmetric"}};
    pattern = *std::move(half);
    return {};
}

}  // namespace coutil
