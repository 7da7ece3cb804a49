#include <algorithm>

#include "core/pattern/panel_key.h"
#include "core/store/comparison_formats.h"
#include "core/store/interchange/number_text.h"
#include "core/store/interchange/svg_writer.h"

namespace coutil {
namespace {

using interchange::SvgWriter;

constexpr double kBetweenPanelsMm = 20;
constexpr double kPageMarginMm = 10;
constexpr double kLetteringMm = 5;
constexpr double kNameMm = 5;
constexpr double kMarkArmMm = 2;

// A pair of panels with its place on the drawing.
struct PlacedPair {
    std::string key;
    const Panel* a = nullptr;
    const Panel* b = nullptr;
    Vector shiftOfA = Vector::Zero();
    Vector shiftOfB = Vector::Zero();
    Box box{};

    [[nodiscard]] const Panel& any() const { return a != nullptr ? *a : *b; }
};

Path movedBy(const Path& path, const Vector& shift) {
    return placed(path, Placement{.shift = shift});
}

PlacedPair pairOf(const Pattern& a, const Pattern& b, const PanelComparison& pair) {
    PlacedPair place{.key = panelKey(pair.name, pair.side)};
    if (pair.inA) place.a = &a.panels[*pair.inA];
    if (pair.inB) place.b = &b.panels[*pair.inB];
    place.shiftOfB = pair.shiftOfB;
    if (place.a != nullptr) place.box.include(boundsOf(outlineOf(*place.a)));
    if (place.b != nullptr)
        place.box.include(boundsOf(movedBy(outlineOf(*place.b), place.shiftOfB)));
    return place;
}

void move(PlacedPair& pair, const Vector& by) {
    pair.shiftOfA += by;
    pair.shiftOfB += by;
    pair.box.lowest += by;
    pair.box.highest += by;
}

// Side by side with the waists in one line, the right half in a row under the left.
std::vector<PlacedPair> laidOut(const Pattern& a, const Pattern& b, const Comparison& comparison) {
    std::vector<PlacedPair> pairs;
    double lowestMm = 0;
    for (const bool isRight : {false, true}) {
        const std::size_t first = pairs.size();
        double nextMm = 0;
        double highestMm = 0;
        for (const PanelComparison& pair : comparison.panels) {
            if ((pair.side == PanelSide::right) != isRight) continue;
            pairs.push_back(pairOf(a, b, pair));
            highestMm = std::max(highestMm, pairs.back().box.highest.y());
            move(pairs.back(), {nextMm - pairs.back().box.lowest.x(), 0});
            nextMm = pairs.back().box.highest.x() + kBetweenPanelsMm;
        }
        const double downMm = isRight ? lowestMm - kBetweenPanelsMm - highestMm : 0;
        for (std::size_t i = first; i < pairs.size(); ++i) {
            move(pairs[i], {0, downMm});
            lowestMm = std::min(lowestMm, pairs[i].box.lowest.y());
        }
    }
    return pairs;
}

void drawEdges(SvgWriter& svg, const std::string& id, const char* cssClass, const Panel& panel,
               const Vector& shift) {
    svg.beginGroup(id);
    for (const Edge& edge : panel.edges) {
        svg.beginGroup(id + "-" + edge.name, edge.name);
        svg.path(cssClass, movedBy(edge.path, shift), false);
        svg.endGroup();
    }
    svg.endGroup();
}

void drawLevels(SvgWriter& svg, const std::string& id, const Panel& panel, const Vector& shift) {
    svg.beginGroup(id + "-levels");
    for (const LevelLine& level : panel.levels) {
        svg.beginGroup(id + "-level-" + level.level, level.level);
        svg.line("level", level.front + shift, level.back + shift);
        svg.endGroup();
    }
    svg.endGroup();
}

void drawRegister(SvgWriter& svg, const std::string& id, const Panel& panel, const Vector& shift) {
    svg.beginGroup(id + "-register");
    for (const Edge& edge : panel.edges) {
        if (const auto mark = pointAtSeamPosition(edge, 0))
            svg.cross("mark", *mark + shift, kMarkArmMm);
    }
    svg.line("grain", panel.grain[0] + shift, panel.grain[1] + shift);
    svg.endGroup();
}

void drawPair(SvgWriter& svg, const PlacedPair& pair) {
    const std::string id = "panel-" + pair.key;
    const Vector& shift = pair.a != nullptr ? pair.shiftOfA : pair.shiftOfB;
    svg.beginGroup(id, pair.key);
    drawLevels(svg, id, pair.any(), shift);
    drawRegister(svg, id, pair.any(), shift);
    if (pair.a != nullptr) drawEdges(svg, id + "-a", "old", *pair.a, pair.shiftOfA);
    if (pair.b != nullptr) drawEdges(svg, id + "-b", "new", *pair.b, pair.shiftOfB);
    // Below the grain line, about in the middle: a letter is some 0.55 of its height wide.
    const Vector belowGrain(-0.275 * kNameMm * static_cast<double>(pair.key.size()),
                            -1.6 * kNameMm);
    svg.text(pair.key, pair.any().grain[0] + shift + belowGrain, kNameMm);
    svg.endGroup();
}

std::string rule(const char* cssClass, const ComparedLine& line, const char* width) {
    std::string css =
        std::string(".") + cssClass + "{stroke:" + line.colour + ";stroke-width:" + width + ";";
    if (!line.dashesMm.empty()) {
        css += "stroke-dasharray:";
        for (const double mm : line.dashesMm) css += interchange::numberText(mm, 2) + " ";
        css.back() = ';';
    }
    return css + "}";
}

void drawLegend(SvgWriter& svg, const Point& at, const std::string& label, const char* cssClass) {
    constexpr double kSampleMm = 30;
    svg.line(cssClass, at + Vector(0, kLetteringMm / 3), at + Vector(kSampleMm, kLetteringMm / 3));
    svg.text(label, at + Vector(kSampleMm + kLetteringMm, 0), kLetteringMm);
}

}  // namespace

std::string writeComparisonSvg(const Pattern& a, const Pattern& b, const Comparison& comparison,
                               const ComparedLine& lineA, const ComparedLine& lineB,
                               const std::string& title) {
    const std::vector<PlacedPair> pairs = laidOut(a, b, comparison);
    Box page;
    page.include(Point::Zero());
    for (const PlacedPair& pair : pairs) page.include(pair.box);
    page.lowest -= Vector(kPageMarginMm, kPageMarginMm + 6 * kLetteringMm);
    page.highest += Vector(kPageMarginMm, kPageMarginMm);
    SvgWriter svg(page, title, rule("old", lineA, "0.2") + rule("new", lineB, "0.5"));
    for (const PlacedPair& pair : pairs) drawPair(svg, pair);
    const Point foot = page.lowest + Vector(kPageMarginMm, kPageMarginMm);
    svg.beginGroup("legend");
    drawLegend(svg, foot + Vector(0, 4 * kLetteringMm), lineA.label, "old");
    drawLegend(svg, foot + Vector(0, 2 * kLetteringMm), lineB.label, "new");
    svg.text(title, foot, kLetteringMm);
    svg.endGroup();
    return svg.finished();
}

}  // namespace coutil
