#include "core/units/length_sum.h"

#include <array>
#include <charconv>
#include <limits>
#include <utility>

namespace coutil {

namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return c >= 'a' && c <= 'z'; }
bool isMark(char c) { return c == '.' || c == ','; }

// Reads from the front of a text; what does not fit leaves the place unchanged.
class SumReader {
  public:
    explicit SumReader(std::string_view text) : text_(text) {}

    std::optional<std::vector<LengthTerm>> sum() {
        std::vector<LengthTerm> terms;
        skipSpaces();
        double sign = 1;
        if (const auto first = takeSign()) sign = *first;
        for (;;) {
            skipSpaces();
            const auto value = number();
            if (!value) return std::nullopt;
            skipSpaces();
            terms.push_back({sign * *value, takeUnit()});
            skipSpaces();
            if (at_ == text_.size()) return terms;
            const auto next = takeSign();
            if (!next) return std::nullopt;
            sign = *next;
        }
    }

  private:
    [[nodiscard]] char peek(std::size_t ahead = 0) const {
        return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
    }

    void skipSpaces() {
        while (peek() == ' ' || peek() == '\t') ++at_;
    }

    std::optional<double> takeSign() {
        if (peek() != '+' && peek() != '-') return std::nullopt;
        return text_[at_++] == '-' ? -1 : 1;
    }

    std::string_view takeDigits() {
        const std::size_t start = at_;
        while (isDigit(peek())) ++at_;
        return text_.substr(start, at_ - start);
    }

    static double valueOf(const std::string& digits) {
        double value = 0;
        const auto end = digits.data() + digits.size();
        const auto result = std::from_chars(digits.data(), end, value, std::chars_format::fixed);
        return result.ec == std::errc{} ? value : std::numeric_limits<double>::infinity();
    }

    // "3/4"; nothing without a slash or over zero.
    std::optional<double> takeFraction() {
        const std::size_t start = at_;
        const std::string above(takeDigits());
        if (!above.empty() && peek() == '/' && isDigit(peek(1))) {
            ++at_;
            const double below = valueOf(std::string(takeDigits()));
            if (below > 0) return valueOf(above) / below;
        }
        at_ = start;
        return std::nullopt;
    }

    // The proper fraction after a whole number, if there is one; "37 12" is none.
    std::optional<double> takeMixedPart() {
        const std::size_t start = at_;
        if (peek() == '-') {
            ++at_;
        } else {
            skipSpaces();
        }
        if (at_ > start) {
            const auto part = takeFraction();
            if (part && *part < 1) return part;
        }
        at_ = start;
        return std::nullopt;
    }

    std::optional<double> number() {
        if (const auto fraction = takeFraction()) return fraction;
        std::string digits(takeDigits());
        const bool isWhole = !isMark(peek());
        if (isWhole) {
            if (digits.empty()) return std::nullopt;
            const double whole = valueOf(digits);
            return whole + takeMixedPart().value_or(0);
        }
        ++at_;
        const std::string_view decimals = takeDigits();
        if (digits.empty() && decimals.empty()) return std::nullopt;
        return valueOf((digits.empty() ? "0" : digits) + "." + std::string(decimals));
    }

    std::optional<LengthUnit> takeUnit() {
        constexpr std::array<std::pair<std::string_view, LengthUnit>, 6> kNames{
            {{"\"", LengthUnit::inch},
             {"in", LengthUnit::inch},
             {"inch", LengthUnit::inch},
             {"inches", LengthUnit::inch},
             {"cm", LengthUnit::centimetre},
             {"mm", LengthUnit::millimetre}}};
        std::size_t length = peek() == '"' ? 1 : 0;
        while (isLetter(peek(length))) ++length;
        for (const auto& [name, unit] : kNames) {
            if (text_.substr(at_, length) == name) {
                at_ += length;
                return unit;
            }
        }
        return std::nullopt;
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

}  // namespace

std::optional<std::vector<LengthTerm>> readLengthSum(std::string_view text) {
    return SumReader(text).sum();
}

}  // namespace coutil
