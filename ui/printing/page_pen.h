#pragma once

#include <QPolygonF>
#include <QString>

#include "core/sheets/sheet_drawing.h"
#include "ui/comparing/compared_states.h"

namespace coutil {

// Writes lines and words on one page of a comparison; mm from the paper's lower left corner.
class PagePen {
  public:
    PagePen(double widthMm, double heightMm, double marginMm);

    void path(const Path& path, double widthMm, SheetInk ink);
    void path(const Path& path, double widthMm, const ComparedState& state);
    void line(const Point& from, const Point& to, double widthMm, SheetInk ink);
    void words(const QString& text, const Point& at, double heightMm,
               TextAnchor anchor = TextAnchor::left, double roomMm = 0);

    [[nodiscard]] SheetDrawing& page() { return page_; }
    [[nodiscard]] Box frame() const;  // inside the margins

  private:
    SheetDrawing page_;
};

// How wide the words run on paper at most, in the font of the sheets.
[[nodiscard]] double wordsWidthMm(const QString& text, double heightMm);

}  // namespace coutil
