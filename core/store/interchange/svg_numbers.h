#pragma once

#include <optional>
#include <string_view>

namespace coutil::interchange {

// Reads a list of SVG numbers ("1 2,3-4.5e1.5") from its front, whatever the locale. Nothing
// larger than 10,000,000 is a number here.
class SvgNumbers {
  public:
    explicit SvgNumbers(std::string_view text) : rest_(text) {}

    // The next number, with blanks and one comma before it; nothing where there is none.
    [[nodiscard]] std::optional<double> next();
    // The next letter or bracket, without blanks before it; nothing where a number stands.
    [[nodiscard]] std::optional<char> nextSign();
    [[nodiscard]] bool isAtEnd();
    [[nodiscard]] std::string_view rest() const { return rest_; }

  private:
    void skipBlanks();

    std::string_view rest_;
};

// A length with its unit ("210mm", "8.5in", "96"): millimetres, a plain number or px being 1/96 in
// (CSS Values and Units). Nothing for percents, font units and what is no length.
[[nodiscard]] std::optional<double> svgLengthMm(std::string_view text);

}  // namespace coutil::interchange
