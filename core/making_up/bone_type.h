#pragma once

#include <string_view>

namespace coutil {

// What a bone is made of, by how it bends: flat steel over its flat side alone, spiral steel every
// way, synthetic whalebone a little every way.
enum class BoneKind { flatSteel, spiralSteel, synthetic };
[[nodiscard]] std::string_view keyOf(BoneKind kind);  // "flat_steel", "spiral_steel", "synthetic"

struct BoneType {
    BoneKind kind = BoneKind::spiralSteel;
    double widthMm = 6;

    // The linter takes the 0 that the compiler compares with for a pointer.
    auto operator<=>(const BoneType&) const = default;  // NOLINT(modernize-use-nullptr)
};

}  // namespace coutil
