#include "core/sheets/paper.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace coutil {
namespace {

const std::array<Paper, 10>& papers() {
    static const std::array<Paper, 10> known{{
        {"A4", 210'000, 297'000},
        {"A3", 297'000, 420'000},
        {"A0", 841'000, 1'189'000},
        {"Letter", 215'900, 279'400},
        {"Legal", 215'900, 355'600},
        {"Tabloid", 279'400, 431'800},
        {"Roll 610", 610'000, kLongestPageUm, true},
        {"Roll 914", 914'000, kLongestPageUm, true},
        {"Roll 1067", 1'067'000, kLongestPageUm, true},
        {"One page", kLongestPageUm, kLongestPageUm, true, true},
    }};
    return known;
}

// The first page holds a square of 100 mm with its bars, and the narrowest margin is 0.
constexpr long long kLeastSideUm = 120'000;

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string plain(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c != ' ' && c != '\t') out.push_back(lower(c));
    }
    return out;
}

// Whole micrometres from millimetres as typed; nothing for anything that is not a plain number.
std::optional<long long> micrometres(std::string_view text) {
    std::string number(text);
    std::replace(number.begin(), number.end(), ',', '.');
    double mm = 0;
    const char* last = number.data() + number.size();
    const auto [end, error] = std::from_chars(number.data(), last, mm, std::chars_format::fixed);
    if (error != std::errc{} || end != last || !std::isfinite(mm)) return std::nullopt;
    if (std::abs(mm) > 1e9) return std::nullopt;
    return std::llround(mm * 1000);
}

std::optional<Paper> customPaper(const std::string& text) {
    const auto cross = text.find('x');
    if (cross == std::string::npos) return std::nullopt;
    std::string_view rest(text);
    std::string_view height = rest.substr(cross + 1);
    if (height.ends_with("mm")) height.remove_suffix(2);
    const auto widthUm = micrometres(rest.substr(0, cross));
    const auto heightUm = micrometres(height);
    if (!widthUm || !heightUm) return std::nullopt;
    return Paper{text, *widthUm, *heightUm};
}

Problem paperProblem(ProblemCode code, std::string_view name) {
    Problem problem;
    problem.code = code;
    problem.subject = "paper";
    problem.detail = std::string(name);
    return problem;
}

}  // namespace

Paper onePage() { return papers().back(); }

std::span<const Paper> knownPapers() { return papers(); }

Outcome<Paper> paperNamed(std::string_view name) {
    const std::string wanted = plain(name);
    for (const Paper& paper : papers()) {
        if (plain(paper.name) == wanted) return paper;
    }
    const auto custom = customPaper(wanted);
    if (!custom) return paperProblem(ProblemCode::paperUnknown, name);
    const auto [least, most] = std::minmax(custom->widthUm, custom->heightUm);
    if (least < kLeastSideUm) {
        Problem problem = paperProblem(ProblemCode::paperTooSmall, name);
        problem.figures = {{"value", static_cast<double>(least) / 1000},
                           {"limit", static_cast<double>(kLeastSideUm) / 1000}};
        return problem;
    }
    if (most > kLongestPageUm) {
        Problem problem = paperProblem(ProblemCode::sheetOptionOutOfRange, name);
        problem.figures = {{"value", static_cast<double>(most) / 1000},
                           {"lowest", static_cast<double>(kLeastSideUm) / 1000},
                           {"highest", static_cast<double>(kLongestPageUm) / 1000}};
        return problem;
    }
    return *custom;
}

}  // namespace coutil
