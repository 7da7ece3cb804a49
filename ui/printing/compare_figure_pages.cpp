#include "ui/printing/compare_figure_pages.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/printing/page_pen.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ComparePages)
};

constexpr double kHeadingMm = 2.5;
constexpr double kFigureMm = 1.9;
constexpr double kRowMm = 4.2;
constexpr double kBetweenColumnsMm = 10;
constexpr double kNameShare = 0.34;

// Goes down two columns of a page, then to the next page.
class FigureWriter {
  public:
    FigureWriter(const ComparedStates& states, const ComparePaper& paper)
        : states_(states), paper_(paper) {
        turnPage();
    }

    void write(const FigureTable& table) {
        needRows(4);
        writeHeading(table.title);
        writeColumns(table);
        for (const FigureRow& row : table.rows) {
            if (needRows(1)) writeColumns(table);
            writeRow(QStringList(row.name) + row.figures);
            nextRow();
        }
        y_ -= kRowMm;
    }

    void write(const QString& title, const QStringList& lines) {
        if (lines.isEmpty()) return;
        needRows(3);
        writeHeading(title);
        for (const QString& line : lines) {
            for (const QString& part : wrapped(line)) {
                needRows(1);
                pen().words(part, {left(), y_}, kFigureMm, TextAnchor::left, columnMm());
                nextRow();
            }
        }
    }

    [[nodiscard]] std::vector<SheetDrawing> pages() {
        std::vector<SheetDrawing> done;
        for (PagePen& each : pens_) done.push_back(each.page());
        return done;
    }

  private:
    PagePen& pen() { return pens_.back(); }
    void nextRow() { y_ -= kRowMm; }

    [[nodiscard]] double columnMm() const {
        return (pens_.back().frame().widthMm() - kBetweenColumnsMm) / 2;
    }
    [[nodiscard]] double left() const {
        return pens_.back().frame().lowest.x() + column_ * (columnMm() + kBetweenColumnsMm);
    }

    void turnPage() {
        pens_.emplace_back(paper_.widthMm, paper_.heightMm, paper_.marginMm);
        pen().page().name = Words::tr("Figures").toStdString();
        const Box frame = pen().frame();
        pen().words(Words::tr("%1: figures").arg(titleOf(states_)),
                    {frame.lowest.x(), frame.highest.y() - 3}, 3, TextAnchor::left,
                    frame.widthMm());
        column_ = 0;
        startColumn();
    }

    void startColumn() { y_ = pen().frame().highest.y() - 11; }

    // True where it went to another column for them.
    bool needRows(int rows) {
        if (y_ - rows * kRowMm >= pen().frame().lowest.y()) return false;
        if (column_ == 0) {
            column_ = 1;
            startColumn();
        } else {
            turnPage();
        }
        return true;
    }

    void writeHeading(const QString& title) {
        pen().words(title, {left(), y_}, kHeadingMm, TextAnchor::left, columnMm());
        nextRow();
    }

    void writeColumns(const FigureTable& table) {
        writeRow(table.columns);
        pen().line({left(), y_ - 1.1}, {left() + columnMm(), y_ - 1.1}, 0.13, SheetInk::frame);
        nextRow();
    }

    void writeRow(const QStringList& cells) {
        const double name = kNameShare * columnMm();
        pen().words(cells.front(), {left(), y_}, kFigureMm, TextAnchor::left,
                    cells.size() > 6 ? 0.7 * name : name);
        const auto count = static_cast<double>(cells.size() - 1);
        const double from = cells.size() > 6 ? 0.7 * name : name;
        const double each = (columnMm() - from) / std::max(count, 1.0);
        for (int i = 1; i < cells.size(); ++i) {
            pen().words(cells[i], {left() + from + i * each, y_}, kFigureMm, TextAnchor::right,
                        each - 1);
        }
    }

    [[nodiscard]] QStringList wrapped(const QString& text) const {
        QStringList lines(QString{});
        for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
            const QString longer =
                lines.back().isEmpty() ? word : lines.back() + QLatin1Char(' ') + word;
            if (wordsWidthMm(longer, kFigureMm) <= columnMm()) {
                lines.back() = longer;
            } else {
                lines << QStringLiteral("   ") + word;
            }
        }
        return lines;
    }

    const ComparedStates& states_;
    const ComparePaper& paper_;
    std::vector<PagePen> pens_;
    int column_ = 0;
    double y_ = 0;
};

}  // namespace

std::vector<SheetDrawing> figurePages(const ComparedStates& states, const ComparePaper& paper) {
    FigureWriter writer(states, paper);
    for (const FigureTable& table : comparedFigures(states, paper.unit)) writer.write(table);
    writer.write(Words::tr("Alterations between the two"), paper.alterations);
    return writer.pages();
}

}  // namespace coutil
