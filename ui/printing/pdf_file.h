#pragma once

#include <QDateTime>
#include <QString>
#include <functional>
#include <vector>

#include "core/problems/problem.h"
#include "core/sheets/sheet_drawing.h"

namespace coutil {

// What the file says about itself. Nothing of the machine or its user goes in.
struct PdfInfo {
    QString title;
    QDateTime date;  // shown as the day it was made; the same date gives the same bytes
};

// Told how many pages are done; returns false to stop.
using PdfProgress = std::function<bool(int done, int all)>;

enum class PdfEnd { written, stopped };

// Writes the pages true to scale: vector, text searchable, fonts embedded, page boxes exact to
// 0.000001 in, one optional-content layer per kind of line (named in the user's language), and asks
// viewers not to scale (PrintScaling None). Lines lie within 0.0001 mm of the drawings. Wants a
// QGuiApplication (offscreen will do). The file is written whole (store/whole_file.h): a file of
// that name stays as it is until the new one is complete, and a folio is never replaced
// (store/export_file.h); stopped or failed, nothing is left behind. `drawings` has at least one
// page. Problems: fileUnwritable (subject = path, detail = the system's reason), diskFull.
[[nodiscard]] Outcome<PdfEnd> writeSheetsPdf(const std::vector<SheetDrawing>& drawings,
                                             const PdfInfo& info, const QString& path,
                                             const PdfProgress& progress = {});

}  // namespace coutil
