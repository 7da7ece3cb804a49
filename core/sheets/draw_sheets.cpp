#include "core/sheets/draw_sheets.h"

#include <algorithm>
#include <optional>

#include "core/sheets/draw_first_sheet.h"
#include "core/sheets/draw_joins.h"
#include "core/sheets/draw_piece.h"
#include "core/sheets/free_room.h"
#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_grid.h"
#include "core/sheets/sheet_imprint.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

double mm(long long um) { return static_cast<double>(um) / 1000; }

// From the drawing to one sheet's paper.
class ToPaper {
  public:
    ToPaper(const SheetPlan& plan, const Sheet& sheet) : plan_(plan), sheet_(sheet) {}

    [[nodiscard]] Point operator()(const Point& p) const { return onPaper(plan_, sheet_, p); }
    [[nodiscard]] SheetStroke operator()(SheetStroke stroke) const {
        for (Cubic& c : stroke.path.pieces) {
            c = {(*this)(c.p0), (*this)(c.p1), (*this)(c.p2), (*this)(c.p3)};
        }
        return stroke;
    }
    [[nodiscard]] SheetLettering operator()(SheetLettering lettering) const {
        lettering.at = (*this)(lettering.at);
        return lettering;
    }

  private:
    const SheetPlan& plan_;
    const Sheet& sheet_;
};

// The whole drawing with what each line covers, worked out once for all sheets.
struct WholeDrawing {
    std::vector<SheetStroke> strokes;
    std::vector<Box> strokeBoxes;
    std::vector<SheetLettering> letterings;
    std::vector<OutlineShape> shapes;  // of the pieces
    std::vector<Join> joins;
};

WholeDrawing wholeDrawing(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                          const DrawnPiece& drawnPiece) {
    WholeDrawing whole;
    for (const auto& piece : plan.placed) {
        PieceDrawing drawn = drawnPiece(piece);
        std::move(drawn.strokes.begin(), drawn.strokes.end(), std::back_inserter(whole.strokes));
        std::move(drawn.letterings.begin(), drawn.letterings.end(),
                  std::back_inserter(whole.letterings));
    }
    whole.shapes = shapesOn(plan, tracings);
    whole.joins = joinsOf(plan, whole.strokes, whole.letterings);
    for (const auto& stroke : whole.strokes) {
        Box box = boundsOf(stroke.path);
        box.lowest -= Vector::Constant(stroke.widthMm);
        box.highest += Vector::Constant(stroke.widthMm);
        whole.strokeBoxes.push_back(box);
    }
    return whole;
}

// Half a line's width inside, so that nothing reaches into the margin.
void drawFrame(const Box& frame, SheetDrawing& drawing) {
    constexpr double kFrameLineMm = 0.12;
    const Vector in = Vector::Constant(kFrameLineMm / 2);
    const Point a = frame.lowest + in;
    const Point b = frame.highest - in;
    drawing.strokes.push_back({polylinePath({a, {b.x(), a.y()}, b, {a.x(), b.y()}, a}),
                               kFrameLineMm, SheetDash::solid, SheetInk::frame});
    drawing.strokes.back().kind = LineKind::joins;
}

// Joins first, then whatever of the pieces comes into the frame.
void drawWhatIsShown(const SheetPlan& plan, const Sheet& sheet, const WholeDrawing& whole,
                     SheetDrawing& drawing) {
    const ToPaper toPaper(plan, sheet);
    const Box shown = frameOf(plan, sheet);
    for (const Join& join : whole.joins) {
        std::vector<SheetStroke> strokes;
        std::vector<SheetLettering> letterings;
        drawJoin(join, sheet, strokes, letterings);
        for (auto& s : strokes) {
            s.kind = LineKind::joins;
            drawing.strokes.push_back(toPaper(std::move(s)));
        }
        for (auto& l : letterings) {
            l.kind = LineKind::joins;
            drawing.letterings.push_back(toPaper(std::move(l)));
        }
    }
    for (std::size_t i = 0; i < whole.strokes.size(); ++i) {
        if (boxesMeet(whole.strokeBoxes[i], shown)) {
            drawing.strokes.push_back(toPaper(whole.strokes[i]));
        }
    }
    for (const auto& lettering : whole.letterings) {
        if (boxesMeet(aboutBox(lettering), shown)) drawing.letterings.push_back(toPaper(lettering));
    }
}

SheetDrawing drawOne(const SheetPlan& plan, std::size_t index, const std::vector<Tracing>& tracings,
                     const WholeDrawing& whole, const SheetWords& words) {
    const Sheet& sheet = plan.sheets[index];
    SheetDrawing drawing;
    drawing.name = nameOf(sheet);
    drawing.widthMm = mm(plan.sheetWidthUm);
    drawing.heightMm = mm(plan.sheetHeightUm);
    drawing.marginMm = mm(plan.options.marginUm);
    const Box shown = frameOf(plan, sheet);
    const Box frame{onPaper(plan, sheet, shown.lowest), onPaper(plan, sheet, shown.highest)};
    drawFrame(frame, drawing);
    drawWhatIsShown(plan, sheet, whole, drawing);
    std::optional<Box> block;
    if (plan.firstBlock && plan.firstBlock->sheet == index) {
        block = Box{onPaper(plan, sheet, plan.firstBlock->box.lowest),
                    onPaper(plan, sheet, plan.firstBlock->box.highest)};
        drawFirstBlock(plan, tracings, words, *block, drawing);
    }
    FreeRoom room(frame);
    for (const auto& stroke : drawing.strokes) room.take(stroke);
    for (const auto& lettering : drawing.letterings) room.take(aboutBox(lettering));
    if (block) room.take(*block);
    for (OutlineShape shape : whole.shapes) {
        for (Point& p : shape.points) p = onPaper(plan, sheet, p);
        room.coverBy(shapeOf(std::move(shape.points)));
    }
    // One big page is put together with nothing: it needs no name.
    const bool isOnePage = plan.options.paper.isOnePage;
    const std::string page = filled(words.pageOf, std::to_string(pageOfSheet(plan, index) + 1),
                                    std::to_string(pagesOf(plan)));
    const std::string place =
        isOnePage
            ? page
            : joinedBy({filled(words.sheetLabel, drawing.name), page, plan.options.paper.name},
                       ", ");
    writeImprint(place, {titleLine(words), words.scaleNote}, frame, room, drawing);
    if (isOnePage) return drawing;
    const std::size_t imprintEnd = drawing.letterings.size();
    writeLargeName(drawing.name, frame, room, drawing);
    for (std::size_t i = imprintEnd; i < drawing.letterings.size(); ++i) {
        drawing.letterings[i].kind = LineKind::joins;
    }
    return drawing;
}

}  // namespace

std::vector<SheetDrawing> drawSheets(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                                     const SheetWords& words, const DrawnPiece& drawnPiece) {
    std::vector<SheetDrawing> drawings;
    const WholeDrawing whole = wholeDrawing(plan, tracings, drawnPiece);
    for (int page = 0; page < pagesOf(plan); ++page) {
        const auto sheet = sheetOnPage(plan, page);
        drawings.push_back(sheet ? drawOne(plan, *sheet, tracings, whole, words)
                                 : drawFirstSheet(plan, tracings, words));
    }
    return drawings;
}

std::vector<SheetDrawing> drawSheets(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                                     const SheetWords& words) {
    return drawSheets(plan, tracings, words, [&](const PlacedTracing& piece) {
        return drawPiece(plan, piece, tracings[piece.tracing], words);
    });
}

}  // namespace coutil
