#include "core/making_up/bone_type.h"

namespace coutil {

std::string_view keyOf(BoneKind kind) {
    switch (kind) {
        case BoneKind::flatSteel:
            return "flat_steel";
        case BoneKind::spiralSteel:
            return "spiral_steel";
        case BoneKind::synthetic:
            return "synthetic";
    }
    return {};
}

}  // namespace coutil
