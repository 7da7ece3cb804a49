#include "core/store/interchange/svg_numbers.h"

#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace coutil::interchange {

namespace {

constexpr double kLargest = 1e7;

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f'; }

bool startsNumber(char c) { return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.'; }

}  // namespace

void SvgNumbers::skipBlanks() {
    while (!rest_.empty() && isBlank(rest_.front())) rest_.remove_prefix(1);
}

std::optional<double> SvgNumbers::next() {
    skipBlanks();
    std::string_view text = rest_;
    if (!text.empty() && text.front() == ',') {
        text.remove_prefix(1);
        while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
    }
    if (text.empty() || !startsNumber(text.front())) return std::nullopt;
    if (text.front() == '+') text.remove_prefix(1);
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || !(std::abs(number) <= kLargest)) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    rest_ = text;
    return number;
}

std::optional<char> SvgNumbers::nextSign() {
    skipBlanks();
    if (rest_.empty() || startsNumber(rest_.front()) || rest_.front() == ',') return std::nullopt;
    const char sign = rest_.front();
    rest_.remove_prefix(1);
    return sign;
}

bool SvgNumbers::isAtEnd() {
    skipBlanks();
    return rest_.empty();
}

std::optional<double> svgLengthMm(std::string_view text) {
    static constexpr std::array<std::pair<std::string_view, double>, 7> kUnits{{{"", 25.4 / 96},
                                                                                {"px", 25.4 / 96},
                                                                                {"mm", 1},
                                                                                {"cm", 10},
                                                                                {"in", 25.4},
                                                                                {"pt", 25.4 / 72},
                                                                                {"pc", 25.4 / 6}}};
    SvgNumbers numbers(text);
    const auto number = numbers.next();
    if (!number) return std::nullopt;
    std::string_view unit = numbers.rest();
    while (!unit.empty() && isBlank(unit.back())) unit.remove_suffix(1);
    for (const auto& [name, mm] : kUnits) {
        if (unit == name) return *number * mm;
    }
    return std::nullopt;
}

}  // namespace coutil::interchange
