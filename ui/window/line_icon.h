#pragma once

#include <QIcon>
#include <QString>

namespace coutil {

// One of the program's own single-line drawings (resources/icons/NAME.svg), always in the text
// colour of the palette in force.
[[nodiscard]] QIcon lineIcon(const QString& name);

}  // namespace coutil
