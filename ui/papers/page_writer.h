#pragma once

#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <vector>

#include "core/sheets/sheet_drawing.h"

namespace coutil {

// Letters of the papers, height of capitals in mm.
namespace letters {
inline constexpr double kTitle = 4.6;
inline constexpr double kHeading = 3;
inline constexpr double kText = 2.3;
inline constexpr double kSmall = 1.9;
}  // namespace letters

// Writes a paper that is read, not cut: pages of lines and words for the painter of the sheets.
// Places are mm from the page's UPPER left corner, y down, as one reads.
class PageWriter {
  public:
    // `paper` upright; `footer` stands at the foot of every page, %1 the page, %2 how many.
    PageWriter(const Paper& paper, double marginMm, QString footer);

    void newPage();
    [[nodiscard]] double leftMm() const { return marginMm_; }
    [[nodiscard]] double rightMm() const { return widthMm_ - marginMm_; }
    [[nodiscard]] double roomMm() const { return rightMm() - leftMm(); }
    [[nodiscard]] double topMm() const { return marginMm_; }
    [[nodiscard]] double bottomMm() const;  // over the footer

    void line(const QPointF& from, const QPointF& to, double penMm = 0.2,
              SheetInk ink = SheetInk::text, SheetDash dash = SheetDash::solid);
    void box(const QRectF& box, double penMm = 0.2, SheetInk ink = SheetInk::text);
    // A drawing in its own coordinates, brought to the page by `toPage`; what lies outside of the
    // place, to a sixteenth of a curve, is left out.
    void drawing(const QPainterPath& path, const QTransform& toPage, const QRectF& place,
                 double penMm, SheetInk ink = SheetInk::text, SheetDash dash = SheetDash::solid);
    void drawing(const Path& path, const QTransform& toPage, double penMm,
                 SheetInk ink = SheetInk::text, SheetDash dash = SheetDash::solid);
    // One line of text, its baseline at the place; made smaller where it is wider than the room.
    void text(const QString& text, const QPointF& at, double heightMm, double roomMm = 0,
              TextAnchor anchor = TextAnchor::left, SheetInk ink = SheetInk::text);
    // Wrapped text from its upper edge downwards; returns where the next may begin.
    double paragraph(const QString& text, double leftMm, double topMm, double widthMm,
                     double heightMm);
    // How high a paragraph is.
    [[nodiscard]] static double heightOf(const QString& text, double widthMm, double heightMm);
    // "name ________" to write on; returns the baseline.
    void writeLine(const QString& name, const QPointF& at, double toMm, double heightMm);

    // The pages with their footers.
    [[nodiscard]] std::vector<SheetDrawing> finished();

  private:
    [[nodiscard]] Point onPage(const QPointF& p) const;
    void addInside(const Cubic& piece, const Box& place, Path& run, const SheetStroke& pen);
    void finishRun(Path& run, SheetStroke pen);

    double widthMm_;
    double heightMm_;
    double marginMm_;
    QString footer_;
    std::vector<SheetDrawing> pages_;
};

}  // namespace coutil
