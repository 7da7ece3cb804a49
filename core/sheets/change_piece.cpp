#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"
#include "core/sheets/change_sheet.h"
#include "core/sheets/change_strip.h"
#include "core/sheets/free_room.h"
#include "core/sheets/sheet_lettering.h"

namespace coutil {
namespace {

// Widths of pens, mm: the new line as a sewing line has it, the old as thin as prints well.
constexpr double kOldMm = 0.18;
constexpr double kNewMm = 0.5;
constexpr double kPencilMm = 0.4;
constexpr double kFineMm = 0.2;
constexpr double kHairlineMm = 0.1;
constexpr double kTickMm = 4;
constexpr double kArrowMm = 4;

constexpr double kBesideMm = 9;  // from the lines to the box
constexpr double kNumberMm = 3.2;
constexpr double kNameMm = 2.1;
constexpr double kSmallMm = 1.8;
constexpr double kLegendMm = 14;  // a sample of a line
// No sample of a line is ever taken for a line of the pattern by a program that reads the sheets.
constexpr double kSampleFinerMm = 0.03;
constexpr double kLeastWideMm = 74;
constexpr double kSpaceMm = 3;

struct Pen {
    double widthMm = kFineMm;
    SheetInk ink = SheetInk::text;
    SheetDash dash = SheetDash::solid;
    int revision = 0;
};

class PieceMaker {
  public:
    PieceMaker(const PanelChange& change, const LaidChange& laid, const Strip& strip,
               const ChangeInks& inks, const ChangeWords& words)
        : change_(change), laid_(laid), strip_(strip), words_(words) {
        newPen_ = inks.newRevision > 0
                      ? Pen{kNewMm, SheetInk::sewing, SheetDash::solid, inks.newRevision}
                      : Pen{kPencilMm, SheetInk::mark, SheetDash::dashed, 0};
    }

    ChangePiece made() {
        if (laid_.old) drawOutline(*laid_.old, {kOldMm, SheetInk::sewing});
        drawNewLine();
        drawLevels();
        drawMarks();
        drawGrain();
        const Box drawn = boundsOfLines();
        layBox(drawn);
        nameLines(drawn);
        piece_.place.panel = change_.name;
        piece_.place.side = change_.side;
        piece_.place.cutCount = 1;
        piece_.place.isMirroredPair = false;
        return std::move(piece_);
    }

  private:
    void add(const Path& path, const Pen& pen) {
        if (path.isEmpty()) return;
        piece_.strokes.push_back({path, pen.widthMm, pen.dash, pen.ink, true, pen.revision});
    }
    void add(const Point& a, const Point& b, const Pen& pen) { add(straightPath(a, b), pen); }

    void write(const std::string& text, const Point& at, double heightMm, double roomMm,
               const Pen& pen = {}) {
        piece_.letterings.push_back(
            {text, at, heightMm, 0, TextAnchor::left, pen.ink, roomMm, pen.revision});
    }

    [[nodiscard]] bool isInside(const Point& p) const {
        return p.y() >= strip_.fromMm && p.y() <= strip_.toMm;
    }

    void drawOutline(const LaidPanel& panel, const Pen& pen) {
        for (const Edge& edge : panel.edges) {
            for (const Path& part : between(edge.path, strip_)) add(part, pen);
        }
    }

    // Only where it left the old one: elsewhere the old line is the line.
    void drawNewLine() {
        if (!laid_.now) return;
        if (!laid_.old) {
            drawOutline(*laid_.now, newPen_);
            return;
        }
        for (const ChangedStretch& stretch : change_.ofB) {
            if (stretch.toMm - stretch.fromMm < tolerance::kSamePointMm) continue;
            const Path part =
                betweenLengths(laid_.now->edges[stretch.edge].path, stretch.fromMm, stretch.toMm);
            for (const Path& shown : between(part, strip_)) add(shown, newPen_);
        }
    }

    void drawLevel(const LevelLine& level, const Pen& pen) {
        if (!isInside(level.front) || level.front == level.back) return;
        add(level.front, level.back, pen);
        const auto known = words_.sheet.levels.find(level.level);
        const double left = std::min(level.front.x(), level.back.x());
        const double wide = std::abs(level.back.x() - level.front.x());
        write(known == words_.sheet.levels.end() ? level.level : known->second,
              {left + kSpaceMm, level.front.y() + 0.7}, kSmallMm, std::max(6.0, wide / 2),
              {pen.widthMm, pen.revision > 0 ? pen.ink : SheetInk::level, pen.dash, pen.revision});
    }

    void drawLevels() {
        const auto isMoved = [&](const LevelLine& level) {
            return !laid_.old ||
                   std::ranges::find(change_.movedLevels, level.level) != change_.movedLevels.end();
        };
        if (laid_.old) {
            for (const auto& level : laid_.old->levels) {
                drawLevel(level, {kHairlineMm, SheetInk::level});
            }
        }
        if (!laid_.now) return;
        for (const auto& level : laid_.now->levels) {
            if (isMoved(level)) {
                drawLevel(level, {kNewMm / 2, newPen_.ink, newPen_.dash, newPen_.revision});
            }
        }
    }

    [[nodiscard]] static std::optional<Point> waistMarkOf(const Edge& edge) {
        if (edge.path.isEmpty() || !edge.waistMarkAtMm) return std::nullopt;
        return pointAtLength(edge.path, *edge.waistMarkAtMm);
    }

    void drawTick(const Edge& edge, const Pen& pen) {
        const auto at = waistMarkOf(edge);
        if (!at || !isInside(*at)) return;
        const Vector along = tangentAt(edge.path, positionAtLength(edge.path, *edge.waistMarkAtMm));
        const Vector across(-along.y(), along.x());
        add(*at - kTickMm * across, *at + kTickMm * across, pen);
    }

    // Waist marks of the old line, and those of the new where they are at another place.
    void drawMarks() {
        std::vector<Point> old;
        if (laid_.old) {
            for (const Edge& edge : laid_.old->edges) {
                drawTick(edge, {kFineMm, SheetInk::notch});
                if (const auto at = waistMarkOf(edge)) old.push_back(*at);
            }
        }
        if (!laid_.now) return;
        for (const Edge& edge : laid_.now->edges) {
            const auto at = waistMarkOf(edge);
            const bool isOld = at && std::ranges::any_of(old, [&](const Point& p) {
                                   return (p - *at).norm() <= tolerance::kChangedLineMm;
                               });
            if (!isOld) drawTick(edge, {kNewMm / 2, newPen_.ink, {}, newPen_.revision});
        }
    }

    void drawArrow(const Point& tip, double up) {
        for (const double side : {1.0, -1.0}) {
            add(tip, tip + Vector(side * kArrowMm / 3, -up * kArrowMm), {kFineMm, SheetInk::grain});
        }
    }

    // The grain where it is drawn on the master, and dashed where the strip goes on beyond it.
    void drawGrain() {
        const auto& panel = laid_.old ? laid_.old : laid_.now;
        const auto& [low, high] = panel->grain;
        if (high.y() - low.y() <= 0) return;
        const double x = low.x();
        const double from = strip_.fromMm + 1;
        const double to = strip_.toMm - 1;
        const double lineFrom = std::clamp(low.y(), from, to);
        const double lineTo = std::clamp(high.y(), from, to);
        const Pen beyond{kFineMm, SheetInk::grain, SheetDash::dashed};
        if (lineFrom > from) add({x, from}, {x, lineFrom}, beyond);
        if (lineTo < to) add({x, lineTo}, {x, to}, beyond);
        if (lineTo - lineFrom > kArrowMm) {
            add({x, lineFrom}, {x, lineTo}, {kFineMm, SheetInk::grain});
            if (high.y() <= to) drawArrow(high, 1);
            if (low.y() >= from) drawArrow(low, -1);
        }
        SheetLettering name{words_.sheet.grain, {x - 0.8, (from + to) / 2}, kSmallMm};
        name.turnRad = std::acos(0.0);
        name.anchor = TextAnchor::centre;
        name.roomMm = (to - from) * 0.8;
        piece_.letterings.push_back(name);
    }

    [[nodiscard]] Box boundsOfLines() const {
        Box box;
        for (const auto& stroke : piece_.strokes) box.include(boundsOf(stroke.path));
        box.lowest.y() = std::min(box.lowest.y(), strip_.fromMm);
        box.highest.y() = std::max(box.highest.y(), strip_.toMm);
        return box;
    }

    [[nodiscard]] std::string title() const {
        const SheetWords& w = words_.sheet;
        std::string side;
        if (change_.side == PanelSide::left) side = w.leftSide;
        if (change_.side == PanelSide::right) side = joinedBy({w.rightSide, w.mirroredTwin}, ", ");
        return joinedBy({filled(w.panel, change_.name), side}, ", ");
    }

    // What changed, edge by edge with the largest distance.
    [[nodiscard]] std::string whatChanged() const {
        if (!laid_.old) return words_.added;
        std::vector<std::string> parts;
        for (const ChangedStretch& stretch : change_.ofB) {
            const Edge& edge = laid_.now->edges[stretch.edge];
            if (!isShown(stretch)) continue;
            const std::string name = words_.edgeName(edge.name);
            const std::string part =
                stretch.farthestMm > tolerance::kChangedLineMm
                    ? name + ": " + filled(words_.farthest, words_.length(stretch.farthestMm))
                    : name;
            parts.push_back(part);
        }
        return joinedBy(parts, "; ");
    }

    [[nodiscard]] bool isShown(const ChangedStretch& stretch) const {
        const Path& path = laid_.now->edges[stretch.edge].path;
        return isInside(pointAtLength(path, (stretch.fromMm + stretch.toMm) / 2));
    }

    // The head over the lines: name, key of the lines, what changed. Then the box around all.
    void layBox(const Box& drawn) {
        Box box = drawn;
        box.lowest.x() -= kBesideMm;
        box.highest.x() += kBesideMm;
        const double lack = kLeastWideMm - box.widthMm();
        if (lack > 0) {
            box.lowest.x() -= lack / 2;
            box.highest.x() += lack / 2;
        }
        const double left = box.lowest.x() + kSpaceMm;
        const double room = box.widthMm() - 2 * kSpaceMm;
        struct Line {
            std::string text;
            double heightMm;
        };
        std::vector<Line> lines{{title(), kNumberMm}};
        for (auto& text : wrapped(whatChanged(), room, kNameMm))
            lines.push_back({std::move(text), kNameMm});
        double y = drawn.highest.y() + 2;
        // From below: the key of the lines, then the lines of text upwards.
        y = drawKey(left, room, y);
        for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
            write(line->text, {left, y}, line->heightMm, room);
            y += line->heightMm * kLineSpacing;
        }
        box.highest.y() = y + 1;
        const Point& a = box.lowest;
        const Point& b = box.highest;
        piece_.place.cutting = polylinePath({a, {b.x(), a.y()}, b, {a.x(), b.y()}, a});
        piece_.place.labelAt = (a + b) / 2;
        add(piece_.place.cutting, {kHairlineMm, SheetInk::frame, SheetDash::dashed});
        box_ = box;
    }

    // A sample of each line with its name; returns the height above.
    double drawKey(double left, double room, double y) {
        const auto sample = [&](const Pen& pen, const std::string& text) {
            add({left, y + kNameMm / 2}, {left + kLegendMm, y + kNameMm / 2}, pen);
            write(text, {left + kLegendMm + 2, y}, kNameMm, room - kLegendMm - 2, pen);
            y += kNameMm * kLineSpacing;
        };
        Pen pen = newPen_;
        pen.widthMm -= kSampleFinerMm;
        sample(pen, words_.newState);
        if (laid_.old) sample({kOldMm - kSampleFinerMm, SheetInk::sewing}, words_.oldState);
        return y + 0.5;
    }

    // Names beside the lines, wherever there is room in the box.
    void nameLines(const Box& drawn) {
        FreeRoom room({{box_.lowest.x(), drawn.lowest.y()}, {box_.highest.x(), drawn.highest.y()}});
        for (const auto& stroke : piece_.strokes) room.take(stroke);
        for (const auto& lettering : piece_.letterings) room.take(aboutBox(lettering));
        const auto place = [&](const std::string& text, const Point& at, const Pen& pen) {
            const double wide = aboutWidthMm(text, kSmallMm) + 1;
            const auto found = room.placeFor(wide, kSmallMm * 1.6, at);
            if (!found.isFree()) return;
            write(text, found.corner + Vector(0.5, kSmallMm / 3), kSmallMm, wide, pen);
            room.take(aboutBox(piece_.letterings.back()));
        };
        if (laid_.old && laid_.now) {
            for (const ChangedStretch& s : change_.ofB) {
                if (isShown(s) && s.toMm > s.fromMm)
                    place(words_.newLine, farthestOf(*laid_.now, s), newPen_);
            }
            for (const ChangedStretch& s : change_.ofA) {
                const Point at = farthestOf(*laid_.old, s);
                if (isInside(at) && s.toMm > s.fromMm) place(words_.oldLine, at, {});
            }
        }
        const auto& panel = laid_.now ? laid_.now : laid_.old;
        for (const Edge& edge : panel->edges) {
            const auto parts = between(edge.path, strip_);
            if (parts.empty()) continue;
            const Path& part = *std::ranges::max_element(parts, std::less<>(),
                                                         [](const Path& p) { return lengthMm(p); });
            place(words_.edgeName(edge.name), pointAtLength(part, lengthMm(part) * 0.35), {});
        }
    }

    [[nodiscard]] static Point farthestOf(const LaidPanel& panel, const ChangedStretch& s) {
        return pointAtLength(panel.edges[s.edge].path, (s.fromMm + s.toMm) / 2);
    }

    const PanelChange& change_;
    const LaidChange& laid_;
    const Strip& strip_;
    const ChangeWords& words_;
    Pen newPen_;
    ChangePiece piece_;
    Box box_;
};

}  // namespace

std::vector<ChangePiece> changePieces(const Pattern& a, const Pattern& b,
                                      const std::vector<PanelChange>& changes,
                                      const ChangeInks& inks, const ChangeWords& words) {
    std::vector<ChangePiece> pieces;
    for (const PanelChange& change : changes) {
        if (!change.isChanged()) continue;
        const LaidChange laid = laidChange(a, b, change);
        for (const Strip& strip : stripsOf(laid, change)) {
            pieces.push_back(PieceMaker(change, laid, strip, inks, words).made());
        }
    }
    return pieces;
}

}  // namespace coutil
