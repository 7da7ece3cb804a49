#include "core/sheets/draw_first_sheet.h"

#include <algorithm>

#include "core/sheets/sheet_lettering.h"
#include "core/sheets/sheet_map.h"

namespace coutil {
namespace {

constexpr double kSquareMm = 100;
constexpr double kBarMm = 101.6;  // 4 in of 25.4 mm exactly
constexpr double kBarAwayMm = 6;
constexpr double kFigureMm = 118;  // square, bar beside it and its words
constexpr double kTitleMm = 4.5;
constexpr double kHeadingMm = 3;
constexpr double kBodyMm = 2.5;
constexpr double kSmallMm = 2;  // where the page is small
constexpr double kGapMm = 4;
constexpr double kWidestNotesMm = 110;
constexpr double kLeastBesideMm = 42;

double mm(long long um) { return static_cast<double>(um) / 1000; }

// Writes lines downwards from a place and remembers how far it came.
class Column {
  public:
    Column(SheetDrawing& drawing, const Point& topLeft, double widthMm)
        : drawing_(drawing), at_(topLeft), widthMm_(widthMm) {}

    void write(const std::string& text, double heightMm, SheetInk ink = SheetInk::text) {
        for (const auto& line : wrapped(text, widthMm_, heightMm)) {
            at_.y() -= heightMm;
            drawing_.letterings.push_back(
                {line, at_, heightMm, 0, TextAnchor::left, ink, widthMm_});
            at_.y() -= heightMm * (kLineSpacing - 1);
        }
    }
    void skip(double downMm) { at_.y() -= downMm; }
    [[nodiscard]] const Point& at() const { return at_; }

  private:
    SheetDrawing& drawing_;
    Point at_;
    double widthMm_;
};

void addLine(SheetDrawing& drawing, const Point& a, const Point& b, double widthMm) {
    drawing.strokes.push_back({straightPath(a, b), widthMm, SheetDash::solid, SheetInk::text});
}

// A bar of 4 in with a tick at every inch, from `start` along `along`; ticks and words to the side
// `out`.
void drawBar(SheetDrawing& drawing, const Point& start, const Vector& along, const Vector& out) {
    addLine(drawing, start, start + along, 0.2);
    for (int inch = 0; inch <= 4; ++inch) {
        const Point at = start + along * inch / 4;
        addLine(drawing, at, at + out * (inch % 4 == 0 ? 3 : 1.8), 0.2);
    }
}

// One page alone is joined to none.
void writeNotes(Column& column, const SheetWords& words, double textMm, bool isOnlyPage) {
    if (!isOnlyPage) {
        column.write(words.joinHint, textMm);
        column.skip(textMm);
    }
    column.write(words.estimates, textMm);
    column.skip(words.estimates.empty() ? 0 : textMm);
    for (const auto& caution : words.cautions) column.write(caution, textMm);
    column.skip(textMm);
}

// The square with its lower left corner at `corner`, bars below and to the right, and in it the
// words on measuring; on a small page all the others too.
void drawFigure(SheetDrawing& drawing, const Point& corner, const Correction& factor,
                const SheetWords& words, bool isSmallPage, bool isOnlyPage) {
    const Vector side(kSquareMm * factor.x, kSquareMm * factor.y);
    const Point far = corner + side;
    drawing.strokes.push_back(
        {polylinePath({corner, {far.x(), corner.y()}, far, {corner.x(), far.y()}, corner}), 0.2,
         SheetDash::solid, SheetInk::text});
    const Point middle = corner + side / 2;
    drawing.letterings.push_back(
        {words.square, {middle.x(), far.y() - 5}, 2.6, 0, TextAnchor::centre, SheetInk::text, 40});
    drawing.letterings.push_back({words.square,
                                  {corner.x() + 5, middle.y()},
                                  2.6,
                                  1.5707963267948966,
                                  TextAnchor::centre,
                                  SheetInk::text,
                                  40});
    drawBar(drawing, corner - Vector(0, kBarAwayMm), Vector(kBarMm * factor.x, 0), Vector(0, -1));
    drawBar(drawing, Point(far.x() + kBarAwayMm, corner.y()), Vector(0, kBarMm * factor.y),
            Vector(1, 0));
    drawing.letterings.push_back({words.bar,
                                  {middle.x() + 13, corner.y() - kBarAwayMm - 4.2},
                                  2.6,
                                  0,
                                  TextAnchor::centre,
                                  SheetInk::text,
                                  20});
    drawing.letterings.push_back({words.bar,
                                  {far.x() + kBarAwayMm + 2.6, middle.y() + 11},
                                  2.6,
                                  0,
                                  TextAnchor::left,
                                  SheetInk::text,
                                  9});
    Column inside(drawing, Point(corner.x() + 9, far.y() - 9), kSquareMm - 16);
    const double textMm = isSmallPage ? kSmallMm : kBodyMm;
    inside.write(isOnlyPage ? words.measureBeforeCutting : words.measureFirst, textMm);
    inside.skip(textMm);
    inside.write(words.correctionHint, textMm);
    inside.skip(textMm);
    if (isSmallPage) writeNotes(inside, words, textMm, isOnlyPage);
}

void writeTitle(Column& column, const SheetPlan& plan, const SheetWords& words) {
    column.write(words.title.garment.empty() ? words.firstSheet : words.title.garment, kTitleMm);
    column.write(joinedBy({words.title.client, stateOf(words)}, ", "), kBodyMm);
    column.skip(kGapMm / 3);
    column.write(words.scaleNote, kHeadingMm);
    column.write(
        joinedBy({words.firstSheet, plan.options.paper.isOnePage ? "" : plan.options.paper.name,
                  filled(words.pageOf, "1", std::to_string(pagesOf(plan)))},
                 ", "),
        kBodyMm);
    column.skip(kGapMm);
}

void drawInside(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                const SheetWords& words, const Box& page, SheetDrawing& drawing) {
    const double beside = page.widthMm() - kFigureMm - kGapMm;
    const bool isWide = page.widthMm() > page.heightMm() && beside >= kLeastBesideMm;
    const bool isSmall = beside < kLeastBesideMm;
    const Correction factor = correctionOf(plan);

    Column column(drawing, Point(page.lowest.x(), page.highest.y()),
                  isWide ? kFigureMm : page.widthMm());
    writeTitle(column, plan, words);
    const double figureTop = column.at().y();
    const double squareTop = figureTop - (kBarMm - kSquareMm) * factor.y;
    const Point corner(page.lowest.x() + 0.5, squareTop - kSquareMm * factor.y);
    const bool isOnlyPage = pagesOf(plan) == 1;
    drawFigure(drawing, corner, factor, words, isSmall, isOnlyPage);

    // The map takes what is left: under the figure, or beside it on a wide page.
    Box mapRoom{page.lowest, Point(page.highest.x(), corner.y() - kBarAwayMm - 6)};
    if (isWide) {
        mapRoom = {Point(page.lowest.x() + kFigureMm + kGapMm, page.lowest.y()), page.highest};
    }
    if (!isSmall) {
        const double notesTop = isWide ? page.highest.y() : figureTop;
        Column notes(drawing, Point(page.lowest.x() + kFigureMm + kGapMm, notesTop),
                     std::min(beside, kWidestNotesMm));
        writeNotes(notes, words, kBodyMm, isOnlyPage);
        mapRoom.highest.y() = std::min(mapRoom.highest.y(), notes.at().y());
    }
    if (plan.options.paper.isOnePage) return;
    Column heading(drawing, Point(mapRoom.lowest.x(), mapRoom.highest.y()), mapRoom.widthMm());
    heading.write(filled(words.mapHeading, std::to_string(plan.sheets.size())), kHeadingMm);
    mapRoom.highest.y() = heading.at().y();
    drawSheetMap(plan, tracings, mapRoom, drawing);
}

}  // namespace

SheetDrawing drawFirstSheet(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                            const SheetWords& words) {
    SheetDrawing drawing;
    drawing.name = words.firstSheet;
    drawing.widthMm = mm(plan.sheetWidthUm);
    drawing.heightMm = mm(plan.sheetHeightUm);
    drawing.marginMm = mm(plan.options.marginUm);
    const double inset = drawing.marginMm + 1;
    const Box page{Point(inset, inset), Point(drawing.widthMm - inset, drawing.heightMm - inset)};
    drawInside(plan, tracings, words, page, drawing);
    return drawing;
}

void drawFirstBlock(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                    const SheetWords& words, const Box& box, SheetDrawing& drawing) {
    const Point& a = box.lowest;
    const Point& b = box.highest;
    drawing.strokes.push_back({polylinePath({a, {b.x(), a.y()}, b, {a.x(), b.y()}, a}), 0.12,
                               SheetDash::solid, SheetInk::frame});
    const Vector inset = Vector::Constant(3);
    drawInside(plan, tracings, words, {a + inset, b - inset}, drawing);
}

}  // namespace coutil
