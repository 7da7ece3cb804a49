#include "ui/papers/paper_table.h"

#include <algorithm>

#include "core/sheets/sheet_lettering.h"
#include "ui/papers/page_writer.h"

namespace coutil {

namespace {

constexpr double kRowMm = 4.6;
constexpr double kBaselineMm = 3.3;  // in a row
constexpr double kHeadMm = 9;        // heading and column names
constexpr double kAfterMm = 5;
constexpr double kPaddingMm = 2;
constexpr double kWidestFigureMm = 34;

// How wide every column is: figures as they need, the first takes what is left.
std::vector<double> widthsOf(const PaperTable& table, double roomMm) {
    std::vector<double> widths(static_cast<std::size_t>(table.columns.size()), 0);
    double figuresMm = 0;
    for (qsizetype c = 1; c < table.columns.size(); ++c) {
        double widest = aboutWidthMm(table.columns[c].toStdString(), letters::kSmall);
        for (const auto& row : table.rows) {
            if (c < row.cells.size())
                widest = std::max(widest, aboutWidthMm(row.cells[c].toStdString(), letters::kText));
        }
        widths[static_cast<std::size_t>(c)] = std::min(widest + kPaddingMm, kWidestFigureMm);
        figuresMm += widths[static_cast<std::size_t>(c)];
    }
    if (!widths.empty()) widths.front() = std::max(roomMm - figuresMm, roomMm / 4);
    return widths;
}

class TableOnPaper {
  public:
    TableOnPaper(PageWriter& page, const PaperTable& table)
        : page_(page), table_(table), widths_(widthsOf(table, page.roomMm())) {}

    double write(double topMm) {
        y_ = topMm;
        if (y_ + kHeadMm + 2 * kRowMm > page_.bottomMm()) turnPage();
        heading();
        for (const auto& row : table_.rows) {
            if (y_ + kRowMm > page_.bottomMm()) {
                turnPage();
                heading();
            }
            if (row.isStrong) page_.line({page_.leftMm(), y_}, {page_.rightMm(), y_}, 0.25);
            cells(row.cells, letters::kText);
        }
        page_.line({page_.leftMm(), y_}, {page_.rightMm(), y_}, 0.15);
        return y_ + kAfterMm;
    }

  private:
    void turnPage() {
        page_.newPage();
        y_ = page_.topMm();
    }
    void heading() {
        page_.text(table_.title, {page_.leftMm(), y_ + letters::kHeading}, letters::kHeading,
                   page_.roomMm());
        y_ += letters::kHeading + 1.4;
        cells(table_.columns, letters::kSmall);
        page_.line({page_.leftMm(), y_}, {page_.rightMm(), y_}, 0.25);
    }
    void cells(const QStringList& texts, double heightMm) {
        double left = page_.leftMm();
        for (qsizetype c = 0; c < texts.size() && c < table_.columns.size(); ++c) {
            const double wide = widths_[static_cast<std::size_t>(c)];
            const double room = wide - kPaddingMm;
            const QPointF at(c == 0 ? left : left + wide, y_ + kBaselineMm);
            if (!texts[c].isEmpty())
                page_.text(texts[c], at, heightMm, room,
                           c == 0 ? TextAnchor::left : TextAnchor::right);
            left += wide;
        }
        y_ += kRowMm;
    }

    PageWriter& page_;
    const PaperTable& table_;
    std::vector<double> widths_;
    double y_ = 0;
};

}  // namespace

double writeTable(PageWriter& page, const PaperTable& table, double topMm) {
    return TableOnPaper(page, table).write(topMm);
}

}  // namespace coutil
