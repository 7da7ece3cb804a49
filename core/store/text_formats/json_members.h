#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace coutil::text_formats {

// One member of a JSON object, cut out of the text as it stands there.
struct Member {
    std::string_view key;
    std::string_view value;
    bool operator==(const Member&) const = default;
};

// The members of the object that a compact text (no blanks outside of texts) is, in order. Values
// are not looked into; keys are as written, escapes and all. Nothing where brackets do not match.
[[nodiscard]] std::optional<std::vector<Member>> membersOf(std::string_view text);

// The same JSON without the blanks and line ends that only people need.
[[nodiscard]] std::string compact(std::string_view json);

}  // namespace coutil::text_formats
