#pragma once

#include <QDir>

#include "core/revision/folio.h"

namespace coutil {

class MainWindow;

// The Compare bench with the first and the last revision of a folio's first garment: over each
// other, enlarged, the lower end of the card, side by side; then left against right of the last.
[[nodiscard]] bool takeComparing(MainWindow& window, const Folio& folio, const QDir& folder,
                                 const QString& suffix);

}  // namespace coutil
