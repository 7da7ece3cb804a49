#include "core/store/interchange/seven_bit_text.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace coutil::interchange {

namespace {

// U+00C0 to U+00FF.
constexpr std::array<std::string_view, 64> kLatin{
    "A", "A", "A", "A", "Ae", "A", "Ae", "C", "E", "E", "E", "E", "I",  "I", "I",  "I",
    "D", "N", "O", "O", "O",  "O", "Oe", "x", "O", "U", "U", "U", "Ue", "Y", "Th", "ss",
    "a", "a", "a", "a", "ae", "a", "ae", "c", "e", "e", "e", "e", "i",  "i", "i",  "i",
    "d", "n", "o", "o", "o",  "o", "oe", "/", "o", "u", "u", "u", "ue", "y", "th", "y"};

std::string_view spelled(char32_t c) {
    if (c >= 0xC0 && c <= 0xFF) return kLatin[c - 0xC0];
    switch (c) {
        case 0xA0:
            return " ";
        case 0xB0:
            return "deg";
        case 0xBD:
            return "1/2";
        case 0xBC:
            return "1/4";
        case 0xBE:
            return "3/4";
        case 0x2018:
        case 0x2019:
            return "'";
        case 0x201C:
        case 0x201D:
        case 0x201E:
            return "\"";
        case 0x2013:
        case 0x2014:
            return "-";
        default:
            return "?";
    }
}

std::size_t lengthOfCharacter(unsigned char first) {
    if (first < 0xC0) return 1;
    if (first < 0xE0) return 2;
    return first < 0xF0 ? 3 : 4;
}

// The character at the front of a text that begins with a byte over 0x7F, and its bytes; a damaged
// one is U+FFFD and one byte long.
struct Character {
    char32_t code = 0xFFFD;
    std::size_t length = 1;
};

Character characterAt(std::string_view text) {
    const auto first = static_cast<unsigned char>(text[0]);
    const std::size_t length = lengthOfCharacter(first);
    if (length == 1 || text.size() < length) return {};
    char32_t code = first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if ((byte & 0xC0U) != 0x80U) return {};
        code = (code << 6U) | (byte & 0x3FU);
    }
    return {code, length};
}

}  // namespace

std::string sevenBitText(std::string_view utf8) {
    std::string plain;
    while (!utf8.empty()) {
        const auto first = static_cast<unsigned char>(utf8[0]);
        if (first < 0x80) {
            plain += first < 0x20 || first == 0x7F ? ' ' : utf8[0];
            utf8.remove_prefix(1);
            continue;
        }
        const Character character = characterAt(utf8);
        plain += spelled(character.code);
        utf8.remove_prefix(character.length);
    }
    return plain;
}

std::string blockName(std::string_view utf8) {
    constexpr std::size_t kLongest = 31;
    std::string name;
    for (char c : sevenBitText(utf8)) {
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
        const bool isPlain = (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
        name += isPlain ? c : '_';
    }
    name.resize(std::min(name.size(), kLongest));
    return name.empty() ? "_" : name;
}

}  // namespace coutil::interchange
