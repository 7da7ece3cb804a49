#include "core/revision/ink_fields.h"

#include <algorithm>
#include <charconv>

#include "core/revision/ink_grid.h"

namespace coutil {

void InkFields::take(std::string_view expected) {
    if (rest_.starts_with(expected)) {
        rest_.remove_prefix(expected.size());
    } else {
        spoil();
    }
}

std::string_view InkFields::lineWord() {
    const std::string_view found = rest_.substr(0, rest_.find_first_of(" \n"));
    rest_.remove_prefix(found.size());
    return found;
}

std::string_view InkFields::word() {
    take(" ");
    const std::string_view found = lineWord();
    if (found.empty()) spoil();
    return found;
}

std::string InkFields::name() {
    take(" \"");
    std::string found;
    while (!rest_.empty() && rest_.front() != '"') {
        char c = rest_.front();
        rest_.remove_prefix(1);
        if (c == '\n') spoil();  // one record a line
        if (c == '\\' && !rest_.empty()) {
            c = rest_.front() == 'n' ? '\n' : rest_.front();
            rest_.remove_prefix(1);
        }
        found.push_back(c);
    }
    take("\"");
    return found;
}

std::int64_t InkFields::whole() {
    if (rest_.empty() || rest_.front() != ' ') {
        spoil();
        return 0;
    }
    const char* end = rest_.data() + rest_.size();
    std::int64_t number = 0;
    const auto read = std::from_chars(rest_.data() + 1, end, number);
    // Twice the most: the way from one end of the range to the other.
    if (read.ec != std::errc() || std::abs(number) > 2 * kMostInkSteps) {
        spoil();
        return 0;
    }
    rest_.remove_prefix(static_cast<std::size_t>(read.ptr - rest_.data()));
    return number;
}

double InkFields::mm() { return mmOfInkSteps(whole()); }

std::optional<double> InkFields::mmOrNone() {
    if (!rest_.starts_with(" - ") && !rest_.starts_with(" -\n")) return mm();
    rest_.remove_prefix(2);
    return std::nullopt;
}

Point InkFields::point() {
    const double x = mm();
    return {x, mm()};
}

}  // namespace coutil
