#include "core/tracing/line_kind.h"

#include <array>
#include <cstddef>

namespace coutil {

std::string_view keyOf(LineKind kind) {
    static constexpr std::array kKeys{
#define COUTIL_LINE_KIND_KEY(name, key) std::string_view(key),
        COUTIL_LINE_KINDS(COUTIL_LINE_KIND_KEY)
#undef COUTIL_LINE_KIND_KEY
    };
    return kKeys[static_cast<std::size_t>(kind)];
}

const std::vector<LineKind>& allLineKinds() {
    static const std::vector<LineKind> all{
#define COUTIL_LINE_KIND_ITEM(name, key) LineKind::name,
        COUTIL_LINE_KINDS(COUTIL_LINE_KIND_ITEM)
#undef COUTIL_LINE_KIND_ITEM
    };
    return all;
}

}  // namespace coutil
