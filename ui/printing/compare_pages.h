#pragma once

#include <QString>
#include <vector>

#include "core/sheets/sheet_drawing.h"
#include "ui/comparing/compared_figures.h"

namespace coutil {

// What the pages of a comparison say besides the drawing.
struct ComparePaper {
    double widthMm = 297;  // A4, lying
    double heightMm = 210;
    double marginMm = 10;
    double factor = 1;  // of the differences, for the eye
    LengthUnit unit = LengthUnit::centimetre;
    QString madeOn;           // a date in words; may be empty
    QStringList alterations;  // alterationsTold()
    bool hasClient = true;    // her name stands on the pages
};

// First both lines over each other, as large as the page takes them, with their names, the scale
// they are drawn at and the girth chart; then the tables of figures and the alterations between, on
// as many pages as they take. Lines have the inks of their revisions, with dash and label.
[[nodiscard]] std::vector<SheetDrawing> comparePages(const ComparedStates& states,
                                                     const ComparePaper& paper);

}  // namespace coutil
