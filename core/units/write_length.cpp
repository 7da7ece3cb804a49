#include <array>
#include <charconv>
#include <cmath>
#include <numeric>

#include "core/units/length.h"

namespace coutil {

namespace {

constexpr int kSixteenths = 16;
constexpr double kNearlyExactIn = 1.0 / 200;

// Rounded to `decimals`, without trailing zeros, never "-0".
std::string writtenDecimal(double value, int decimals, char decimalMark) {
    std::array<char, 400> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::fixed, decimals)
                         .ptr;
    std::string text(buffer.data(), end);
    if (const auto mark = text.find('.'); mark != std::string::npos) {
        text[mark] = decimalMark;
        while (text.back() == '0') text.pop_back();
        if (text.back() == decimalMark) text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string writtenInches(double inches) {
    // In sixteenths from the start, so that 15.6 of them carry into the whole.
    const double sixteenths = std::round(std::abs(inches) * kSixteenths);
    const double whole = std::floor(sixteenths / kSixteenths);
    const int part = static_cast<int>(sixteenths - whole * kSixteenths);
    const bool isExact = std::abs(sixteenths / kSixteenths - std::abs(inches)) <= kNearlyExactIn;
    std::string text = isExact ? "" : "~";
    if (inches < 0 && sixteenths > 0) text += '-';
    if (whole > 0 || part == 0) text += writtenDecimal(whole, 0, '.');
    if (part > 0) {
        const int common = std::gcd(part, kSixteenths);
        if (whole > 0) text += ' ';
        text += std::to_string(part / common) + '/' + std::to_string(kSixteenths / common);
    }
    return text;
}

}  // namespace

std::string writtenLength(double mm, LengthUnit unit, char decimalMark) {
    if (!std::isfinite(mm)) return {};
    const double value = mm / millimetresIn(unit);
    switch (unit) {
        case LengthUnit::millimetre:
            return writtenDecimal(value, 1, decimalMark);
        case LengthUnit::centimetre:
            return writtenDecimal(value, 2, decimalMark);
        case LengthUnit::inch:
            return writtenInches(value);
    }
    return {};
}

std::string writtenLengthWithUnit(double mm, LengthUnit unit, char decimalMark) {
    const std::string text = writtenLength(mm, unit, decimalMark);
    return text.empty() ? text : text + ' ' + std::string(keyOf(unit));
}

}  // namespace coutil
