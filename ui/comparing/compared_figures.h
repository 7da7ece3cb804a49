#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/units/length.h"
#include "ui/comparing/compared_places.h"

namespace coutil {

// One line of a table of figures, and the place it speaks of.
struct FigureRow {
    QString name;
    QStringList figures;  // as many as the table has columns besides the name's
    ComparedPlace place{};
    bool isUnchanged = false;  // nothing differs: drawn back
};

// A table of figures with its heading, for the card and for paper.
struct FigureTable {
    QString title;
    QStringList columns;  // the name's first
    std::vector<FigureRow> rows;
};

// Girths, what each seam became narrower or wider at the levels, where each edge moved most, edge
// heights, areas. Tables without a row are left out. Lengths in `unit`.
[[nodiscard]] std::vector<FigureTable> comparedFigures(const ComparedStates& states,
                                                       LengthUnit unit);

// The alterations between the two in their order, one a line, with date and reason; what only a has
// is told as given up. Empty for sides.
[[nodiscard]] QStringList alterationsTold(const Folio& folio, const ComparedStates& states,
                                          LengthUnit unit);

}  // namespace coutil
