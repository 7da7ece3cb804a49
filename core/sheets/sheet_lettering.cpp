#include "core/sheets/sheet_lettering.h"

#include <algorithm>
#include <cmath>

namespace coutil {
namespace {

// Advance of one character over the height of capitals, roughly.
double advance(char c) {
    const std::string_view narrow = "iljtfrI.,:;'|!()[]/ -1";
    const std::string_view wide = "mwMWQO@%&+=<>~";
    // Bytes that continue a character of several bytes take no room of their own.
    if ((static_cast<unsigned char>(c) & 0xC0U) == 0x80U) return 0;
    if (narrow.find(c) != std::string_view::npos) return 0.55;
    if (wide.find(c) != std::string_view::npos) return 1.3;
    if (c >= 'A' && c <= 'Z') return 1.0;
    return 0.88;
}

void replaceAll(std::string& text, std::string_view mark, const std::string& by) {
    for (auto at = text.find(mark); at != std::string::npos; at = text.find(mark, at + by.size())) {
        text.replace(at, mark.size(), by);
    }
}

void wrapParagraph(std::string_view text, double widthMm, double heightMm,
                   std::vector<std::string>& lines) {
    std::string line;
    while (!text.empty()) {
        const auto blank = text.find(' ');
        const std::string word(text.substr(0, blank));
        text.remove_prefix(blank == std::string_view::npos ? text.size() : blank + 1);
        if (word.empty()) continue;
        std::string longer = line;
        if (!line.empty()) longer += ' ';
        longer += word;
        if (!line.empty() && aboutWidthMm(longer, heightMm) > widthMm) {
            lines.push_back(line);
            line = word;
        } else {
            line = std::move(longer);
        }
    }
    if (!line.empty()) lines.push_back(line);
}

}  // namespace

double aboutWidthMm(std::string_view text, double heightMm) {
    double sum = 0;
    for (const char c : text) sum += advance(c);
    return sum * heightMm;
}

std::vector<std::string> wrapped(std::string_view text, double widthMm, double heightMm) {
    std::vector<std::string> lines;
    for (;;) {
        const auto end = text.find('\n');
        wrapParagraph(text.substr(0, end), widthMm, heightMm, lines);
        if (end == std::string_view::npos) return lines;
        text.remove_prefix(end + 1);
    }
}

std::string filled(const std::string& pattern, const std::string& first,
                   const std::string& second) {
    std::string text = pattern;
    replaceAll(text, "%2", second);
    replaceAll(text, "%1", first);
    return text;
}

std::string joinedBy(const std::vector<std::string>& parts, std::string_view between) {
    std::string text;
    for (const auto& part : parts) {
        if (part.empty()) continue;
        if (!text.empty()) text += between;
        text += part;
    }
    return text;
}

std::string stateOf(const SheetWords& words) {
    const std::string state =
        words.title.isPencil ? words.pencil : filled(words.revision, words.title.revision);
    return joinedBy({state, words.title.date}, ", ");
}

std::string titleLine(const SheetWords& words) {
    return joinedBy({words.title.garment, words.title.client, stateOf(words)}, ", ");
}

Box aboutBox(const SheetLettering& lettering) {
    double width = aboutWidthMm(lettering.text, lettering.heightMm);
    if (lettering.roomMm > 0) width = std::min(width, lettering.roomMm);
    double left = 0;
    if (lettering.anchor == TextAnchor::centre) left = -width / 2;
    if (lettering.anchor == TextAnchor::right) left = -width;
    const Vector along(std::cos(lettering.turnRad), std::sin(lettering.turnRad));
    const Vector up(-along.y(), along.x());
    Box box;
    for (const double x : {left, left + width}) {
        // Letters with tails hang about a third of a capital below the baseline.
        for (const double y : {-lettering.heightMm / 3, lettering.heightMm}) {
            box.include(lettering.at + x * along + y * up);
        }
    }
    return box;
}

}  // namespace coutil
