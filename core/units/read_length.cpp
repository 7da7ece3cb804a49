#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/units/length.h"
#include "core/units/length_sum.h"

namespace coutil {

namespace {

constexpr double kFarthestMm = 100'000;
constexpr std::size_t kLongestText = 100;
constexpr std::size_t kLongestDetail = 60;

// What keyboards and other programs put in place of ASCII (UTF-8 on the left).
constexpr std::array<std::pair<std::string_view, std::string_view>, 14> kSpellings{
    {{"\u2033", "\""},
     {"\u201D", "\""},
     {"''", "\""},
     {"\u2212", "-"},
     {"\u00A0", " "},
     {"\u202F", " "},
     {"\u2044", "/"},
     {"\u00BD", " 1/2"},
     {"\u00BC", " 1/4"},
     {"\u00BE", " 3/4"},
     {"\u215B", " 1/8"},
     {"\u215C", " 3/8"},
     {"\u215D", " 5/8"},
     {"\u215E", " 7/8"}}};

std::string plainSpelling(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        const auto* match = std::find_if(kSpellings.begin(), kSpellings.end(),
                                         [&](const auto& s) { return text.starts_with(s.first); });
        if (match != kSpellings.end()) {
            plain += match->second;
            text.remove_prefix(match->first.size());
            continue;
        }
        const char c = text.front();
        plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        text.remove_prefix(1);
    }
    return plain;
}

// The text as typed; a very long one is cut, never inside a character.
std::string shownText(std::string_view text) {
    if (text.size() <= kLongestDetail) return std::string(text);
    std::size_t end = kLongestDetail;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
    return std::string(text.substr(0, end)) + "...";
}

Problem problemWith(std::string_view text, ProblemCode code) {
    Problem problem;
    problem.code = code;
    problem.detail = shownText(text);
    if (code == ProblemCode::lengthOutOfRange) {
        problem.figures.push_back({"limit", kFarthestMm, FigureUnit::millimetre});
    }
    return problem;
}

// Terms without a unit take the one named later in the sum, so the sum is added from its end.
double sumMm(const std::vector<LengthTerm>& terms, LengthUnit assumed) {
    double sum = 0;
    LengthUnit unit = assumed;
    std::for_each(terms.rbegin(), terms.rend(), [&](const LengthTerm& term) {
        unit = term.unit.value_or(unit);
        sum += term.value * millimetresIn(unit);
    });
    return sum;
}

}  // namespace

Outcome<double> readLengthMm(std::string_view text, LengthUnit assumed) {
    if (text.size() > kLongestText) return problemWith(text, ProblemCode::lengthUnreadable);
    const std::string plain = plainSpelling(text);
    std::string_view sum = plain;
    // writtenLength() puts this before a fraction that is not quite the length.
    if (sum.starts_with('~')) sum.remove_prefix(1);
    const auto terms = readLengthSum(sum);
    if (!terms) return problemWith(text, ProblemCode::lengthUnreadable);
    const double mm = sumMm(*terms, assumed);
    if (!(std::abs(mm) <= kFarthestMm)) return problemWith(text, ProblemCode::lengthOutOfRange);
    return mm;
}

}  // namespace coutil
