#include "ui/printing/page_pen.h"

#include <QFont>
#include <QFontMetricsF>

namespace coutil {

namespace {
constexpr int kFontUnits = 100;
}

PagePen::PagePen(double widthMm, double heightMm, double marginMm) {
    page_.widthMm = widthMm;
    page_.heightMm = heightMm;
    page_.marginMm = marginMm;
}

Box PagePen::frame() const {
    Box box;
    box.include(Point(page_.marginMm, page_.marginMm));
    box.include(Point(page_.widthMm - page_.marginMm, page_.heightMm - page_.marginMm));
    return box;
}

void PagePen::path(const Path& path, double widthMm, SheetInk ink) {
    SheetStroke stroke;
    stroke.path = path;
    stroke.widthMm = widthMm;
    stroke.ink = ink;
    page_.strokes.push_back(std::move(stroke));
}

void PagePen::path(const Path& path, double widthMm, const ComparedState& state) {
    SheetStroke stroke;
    stroke.path = path;
    stroke.widthMm = widthMm;
    stroke.ink = SheetInk::mark;
    stroke.revision = state.revision;
    if (state.isDotted) stroke.dash = SheetDash::dotted;
    page_.strokes.push_back(std::move(stroke));
}

void PagePen::line(const Point& from, const Point& to, double widthMm, SheetInk ink) {
    path(straightPath(from, to), widthMm, ink);
}

void PagePen::words(const QString& text, const Point& at, double heightMm, TextAnchor anchor,
                    double roomMm) {
    SheetLettering lettering;
    lettering.text = text.toStdString();
    lettering.at = at;
    lettering.heightMm = heightMm;
    lettering.anchor = anchor;
    lettering.roomMm = roomMm;
    page_.letterings.push_back(std::move(lettering));
}

double wordsWidthMm(const QString& text, double heightMm) {
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Sans Serif")});
    font.setPixelSize(kFontUnits);
    font.setHintingPreference(QFont::PreferNoHinting);
    const QFontMetricsF metrics(font);
    return metrics.horizontalAdvance(text) * heightMm / metrics.capHeight();
}

}  // namespace coutil
