#include <algorithm>

#include "core/block/style.h"

namespace coutil {

std::string_view keyOf(LevelId level) {
    switch (level) {
        case LevelId::aboveBust:
            return "above_bust";
        case LevelId::bust:
            return "bust";
        case LevelId::underBust:
            return "under_bust";
        case LevelId::waist:
            return "waist";
        case LevelId::highHip:
            return "high_hip";
        case LevelId::hip:
            return "hip";
    }
    return {};
}

std::optional<LevelId> levelNamed(std::string_view key) {
    const auto* const found =
        std::ranges::find_if(kAllLevels, [&](LevelId level) { return keyOf(level) == key; });
    if (found == kAllLevels.end()) return std::nullopt;
    return *found;
}

}  // namespace coutil
