#pragma once

#include <QString>
#include <QStringList>
#include <vector>

namespace coutil {

class PageWriter;

// A table to read: its heading, columns (the first one the widest, to the left; figures to the
// right), and rows of as many cells. A row may be strong (totals).
struct PaperTable {
    struct Row {
        QStringList cells;
        bool isStrong = false;
    };
    QString title;
    QStringList columns;
    std::vector<Row> rows;
};

// Writes a table from `topMm` down, over further pages where it must, each with the columns' names
// again; a heading never stands alone at the foot of a page. Returns where the next may begin.
double writeTable(PageWriter& page, const PaperTable& table, double topMm);

}  // namespace coutil
