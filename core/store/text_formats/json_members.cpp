#include "core/store/text_formats/json_members.h"

#include <algorithm>

namespace coutil::text_formats {
namespace {

// Where the text that begins with a quotation mark at `from` ends (behind the closing mark).
std::size_t endOfText(std::string_view json, std::size_t from) {
    for (std::size_t i = from + 1; i < json.size(); ++i) {
        if (json[i] == '\\') {
            ++i;
        } else if (json[i] == '"') {
            return i + 1;
        }
    }
    return std::string_view::npos;
}

// Where the value that begins at `from` ends.
std::size_t endOfValue(std::string_view json, std::size_t from) {
    std::size_t depth = 0;
    for (std::size_t i = from; i < json.size();) {
        const char c = json[i];
        if (c == '"') {
            i = endOfText(json, i);
            if (i == std::string_view::npos) return i;
            continue;
        }
        if (depth == 0 && (c == ',' || c == '}' || c == ']')) return i;
        if (c == '{' || c == '[') ++depth;
        if (c == '}' || c == ']') --depth;
        ++i;
    }
    return std::string_view::npos;
}

}  // namespace

std::optional<std::vector<Member>> membersOf(std::string_view text) {
    std::vector<Member> members;
    if (!text.starts_with('{')) return std::nullopt;
    for (std::size_t at = 1; at < text.size();) {
        if (text[at] != '"') return std::nullopt;
        const std::size_t keyEnd = endOfText(text, at);
        if (keyEnd >= text.size() || text[keyEnd] != ':') return std::nullopt;
        const std::size_t valueEnd = endOfValue(text, keyEnd + 1);
        if (valueEnd >= text.size()) return std::nullopt;
        members.push_back(
            {text.substr(at + 1, keyEnd - at - 2), text.substr(keyEnd + 1, valueEnd - keyEnd - 1)});
        at = valueEnd + 1;
        if (text[valueEnd] == '}') return at == text.size() ? std::optional(members) : std::nullopt;
        if (text[valueEnd] != ',') return std::nullopt;
    }
    return std::nullopt;
}

std::string compact(std::string_view json) {
    std::string dense;
    dense.reserve(json.size());
    for (std::size_t i = 0; i < json.size();) {
        if (json[i] == '"') {
            const std::size_t end = std::min(endOfText(json, i), json.size());
            dense += json.substr(i, end - i);
            i = end;
            continue;
        }
        if (std::string_view(" \t\r\n").find(json[i]) == std::string_view::npos)
            dense.push_back(json[i]);
        ++i;
    }
    return dense;
}

}  // namespace coutil::text_formats
