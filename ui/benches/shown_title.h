#pragma once

#include <QDate>
#include <QString>

#include "core/tracing/tracing.h"

namespace coutil {

class FolioDocument;
struct TableScene;

// What is on the table in words: "pencil", "revision 2, 18 Mar 2026".
[[nodiscard]] QString shownName(const FolioDocument& document);

// Caption and pen of a scene that shows it: graphite, or ink.
void captionScene(TableScene& scene, const FolioDocument& document);

// The title of drawings made of it. A pencil's date is that of the day it is printed; a confirmed
// revision's its own.
[[nodiscard]] TracingTitle shownTitle(const FolioDocument& document, const QDate& printedOn);

}  // namespace coutil
