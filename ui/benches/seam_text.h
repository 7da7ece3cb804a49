#pragma once

#include <QString>
#include <cstddef>

namespace coutil {

// The name of the seam between panels `index` + 1 and `index` + 2 of a half: "1-2".
[[nodiscard]] inline QString seamText(std::size_t index) {
    return QStringLiteral("%1-%2").arg(index + 1).arg(index + 2);
}

}  // namespace coutil
