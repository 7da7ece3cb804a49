#include <algorithm>

#include "core/sheets/draw_first_sheet.h"
#include "core/sheets/draw_joins.h"
#include "core/sheets/draw_piece.h"
#include "core/sheets/free_room.h"
#include "core/sheets/outline_shape.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

constexpr double kNameMm = 26;
constexpr double kNoteMm = 1.9;

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
    std::vector<Join> joins;
};

WholeDrawing wholeDrawing(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                          const SheetWords& words) {
    WholeDrawing whole;
    for (const auto& piece : plan.placed) {
        PieceDrawing drawn = drawPiece(plan, piece, tracings[piece.tracing], words);
        std::move(drawn.strokes.begin(), drawn.strokes.end(), std::back_inserter(whole.strokes));
        std::move(drawn.letterings.begin(), drawn.letterings.end(),
                  std::back_inserter(whole.letterings));
    }
    whole.joins = joinsOf(plan, whole.strokes);
    for (const auto& stroke : whole.strokes) {
        Box box = boundsOf(stroke.path);
        box.lowest -= Vector::Constant(stroke.widthMm);
        box.highest += Vector::Constant(stroke.widthMm);
        whole.strokeBoxes.push_back(box);
    }
    return whole;
}

void writeName(const std::string& name, const Box& frame, FreeRoom& room, SheetDrawing& drawing) {
    const double width = aboutWidthMm(name, kNameMm);
    const double clear = kNameMm * 0.15;
    const Point middle = (frame.lowest + frame.highest) / 2;
    const Point at = room.placeFor(width, kNameMm + 2 * clear, middle).corner;
    drawing.letterings.push_back({name, at + Vector(width / 2, clear), kNameMm, 0,
                                  TextAnchor::centre, SheetInk::pale, width});
    room.take(Box{at, at + Vector(width, kNameMm + 2 * clear)});
}

// The notes in one of several shapes, whichever lies on fewest lines; wide ones preferred.
void writeNotes(const std::vector<std::string>& notes, const Box& frame, const FreeRoom& room,
                SheetDrawing& drawing) {
    FreeRoom::Place best;
    std::vector<std::string> lines;
    double roomMm = 0;
    for (const double widest : {120.0, 70.0, 48.0, 34.0}) {
        std::vector<std::string> broken;
        double width = 0;
        for (const auto& note : notes) {
            for (auto& line : wrapped(note, std::min(widest, frame.widthMm() - 4), kNoteMm)) {
                width = std::max(width, aboutWidthMm(line, kNoteMm));
                broken.push_back(std::move(line));
            }
        }
        const double height = kLineSpacing * kNoteMm * static_cast<double>(broken.size()) + 1;
        const auto place = room.placeFor(width + 2, height, frame.lowest);
        if (!lines.empty() && place.taken >= best.taken) continue;
        best = place;
        lines = std::move(broken);
        roomMm = width;
    }
    Point at =
        best.corner + Vector(1, kLineSpacing * kNoteMm * static_cast<double>(lines.size()) + 1);
    for (const auto& line : lines) {
        at.y() -= kLineSpacing * kNoteMm;
        drawing.letterings.push_back({line, at + Vector(0, 0.4 * kNoteMm), kNoteMm, 0,
                                      TextAnchor::left, SheetInk::text, roomMm});
    }
}

// Half a line's width inside, so that nothing reaches into the margin.
void drawFrame(const Box& frame, SheetDrawing& drawing) {
    constexpr double kFrameLineMm = 0.12;
    const Vector in = Vector::Constant(kFrameLineMm / 2);
    const Point a = frame.lowest + in;
    const Point b = frame.highest - in;
    drawing.strokes.push_back({polylinePath({a, {b.x(), a.y()}, b, {a.x(), b.y()}, a}),
                               kFrameLineMm, SheetDash::solid, SheetInk::frame});
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
        for (auto& s : strokes) drawing.strokes.push_back(toPaper(std::move(s)));
        for (auto& l : letterings) drawing.letterings.push_back(toPaper(std::move(l)));
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

SheetDrawing drawOne(const SheetPlan& plan, std::size_t index, const WholeDrawing& whole,
                     const SheetWords& words) {
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
    FreeRoom room(frame);
    for (const auto& stroke : drawing.strokes) room.take(stroke);
    for (const auto& lettering : drawing.letterings) room.take(aboutBox(lettering));
    writeName(drawing.name, frame, room, drawing);
    const auto pages = std::to_string(plan.sheets.size() + 1);
    const std::string place =
        joinedBy({filled(words.sheetLabel, drawing.name),
                  filled(words.pageOf, std::to_string(index + 2), pages), plan.options.paper.name},
                 ", ");
    writeNotes({place, titleLine(words), words.scaleNote}, frame, room, drawing);
    return drawing;
}

}  // namespace

std::vector<SheetDrawing> drawSheets(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                                     const SheetWords& words) {
    std::vector<SheetDrawing> drawings{drawFirstSheet(plan, tracings, words)};
    const WholeDrawing whole = wholeDrawing(plan, tracings, words);
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        drawings.push_back(drawOne(plan, i, whole, words));
    }
    return drawings;
}

}  // namespace coutil
