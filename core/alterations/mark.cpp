#include "core/alterations/mark.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace coutil {
namespace {

// In the order of MarkKind.
constexpr std::array<std::string_view, 12> kKeys{"pinned",
                                                 "opened",
                                                 "raise",
                                                 "lower",
                                                 "longer",
                                                 "shorter",
                                                 "bust_point_higher",
                                                 "bust_point_lower",
                                                 "bust_point_wider",
                                                 "gapes",
                                                 "cuts_in",
                                                 "bone_pokes"};

}  // namespace

std::string_view keyOf(MarkKind kind) { return kKeys[static_cast<std::size_t>(kind)]; }

std::optional<MarkKind> markKindNamed(std::string_view key) {
    const auto found = std::ranges::find(kKeys, key);
    if (found == kKeys.end()) return std::nullopt;
    return static_cast<MarkKind>(found - kKeys.begin());
}

}  // namespace coutil
