#include <array>
#include <charconv>
#include <string>

#include "core/revision/ink.h"
#include "core/revision/ink_grid.h"
#include "core/revision/ink_text.h"

namespace coutil {
namespace {

void putWord(std::string& text, std::string_view word) {
    text.push_back(' ');
    text += word;
}

void putWhole(std::string& text, std::int64_t number) {
    std::array<char, 24> digits{' '};
    const auto end = std::to_chars(digits.data() + 1, digits.data() + digits.size(), number);
    text.append(digits.data(), end.ptr);
}

void putMm(std::string& text, double mm) { putWhole(text, inkStepsOf(mm)); }

void putMm(std::string& text, const std::optional<double>& mm) {
    if (mm) {
        putMm(text, *mm);
    } else {
        putWord(text, "-");
    }
}

void putPoint(std::string& text, const Point& point) {
    putMm(text, point.x());
    putMm(text, point.y());
}

void putName(std::string& text, std::string_view name) {
    text += " \"";
    for (const char c : name) {
        if (c == '"' || c == '\\') text.push_back('\\');
        if (c == '\n') {
            text += "\\n";
        } else {
            text.push_back(c);
        }
    }
    text.push_back('"');
}

// The start, then every control point as steps from the point before it.
void putPath(std::string& text, const Path& path) {
    if (path.isEmpty()) return;
    std::int64_t x = 0;
    std::int64_t y = 0;
    const auto put = [&](const Point& point) {
        const std::int64_t nextX = inkStepsOf(point.x());
        const std::int64_t nextY = inkStepsOf(point.y());
        putWhole(text, nextX - x);
        putWhole(text, nextY - y);
        x = nextX;
        y = nextY;
    };
    put(path.start());
    for (const Cubic& piece : path.pieces) {
        put(piece.p1);
        put(piece.p2);
        put(piece.p3);
    }
}

void putEdge(std::string& text, const Edge& edge) {
    text += ink_text::kEdge;
    putName(text, edge.name);
    putWord(text, keyOf(edge.role));
    putWord(text, edge.runsUp ? ink_text::kUp : ink_text::kDown);
    putMm(text, edge.waistMarkAtMm);
    putPath(text, edge.path);
    text.push_back('\n');
}

void putPanel(std::string& text, const Panel& panel) {
    text += ink_text::kPanel;
    putName(text, panel.name);
    putWord(text, ink_text::kSides[static_cast<std::size_t>(panel.side)]);
    putWord(text, panel.isOnFold ? ink_text::kFold : ink_text::kLoose);
    for (const Point& point : panel.grain) putPoint(text, point);
    text.push_back('\n');
    for (const Edge& edge : panel.edges) putEdge(text, edge);
    for (const LevelLine& line : panel.levels) {
        text += ink_text::kLine;
        putName(text, line.level);
        putPoint(text, line.front);
        putPoint(text, line.back);
        text.push_back('\n');
    }
}

void putSeam(std::string& text, const Seam& seam) {
    text += ink_text::kSeam;
    putName(text, seam.name);
    for (const std::size_t index :
         {seam.front.panel, seam.front.edge, seam.back.panel, seam.back.edge})
        putWhole(text, static_cast<std::int64_t>(index));
    putMm(text, seam.easeMm);
    text.push_back('\n');
}

void putLevel(std::string& text, const Level& level) {
    text += ink_text::kLevel;
    putName(text, level.name);
    putMm(text, level.heightMm);
    putMm(text, level.bodyMm);
    putMm(text, level.targetMm);
    putMm(text, level.patternMm);
    putMm(text, level.lacingGapMm);
    text.push_back('\n');
}

void putEstimate(std::string& text, const Estimate& estimate) {
    text += ink_text::kEstimate;
    putWord(text, keyOf(estimate.id));
    putMm(text, estimate.valueMm);
    putMm(text, estimate.sdMm);
    putName(text, estimate.source);
    for (const Measurement from : estimate.from) putWord(text, keyOf(from));
    text.push_back('\n');
}

}  // namespace

std::string inkText(const Pattern& pattern) {
    std::string text{ink_text::kHead};
    text += ink_text::kLacing;
    putMm(text, pattern.lacingGapMm);
    text.push_back('\n');
    for (const Panel& panel : pattern.panels) putPanel(text, panel);
    for (const Seam& seam : pattern.seams) putSeam(text, seam);
    for (const Level& level : pattern.levels) putLevel(text, level);
    for (const Estimate& estimate : pattern.estimates) putEstimate(text, estimate);
    return text;
}

}  // namespace coutil
