#include <algorithm>
#include <numeric>

#include "core/store/text_formats/json_object.h"

namespace coutil::text_formats {

namespace {

// Letters to add, drop or replace to get from one to the other.
std::size_t changesBetween(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), 0U);
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t replaced = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({replaced, row[j] + 1, diagonal + 1});
        }
    }
    return row.back();
}

}  // namespace

std::string nearestName(std::string_view name, const std::vector<std::string>& known) {
    constexpr std::size_t kLongest = 64;
    if (name.size() > kLongest) return {};
    std::string nearest;
    // A third of the letters may be wrong; more is another word.
    std::size_t fewest = name.size() / 3 + 1;
    for (const std::string& candidate : known) {
        const std::size_t changes = changesBetween(name, candidate);
        if (changes >= fewest) continue;
        fewest = changes;
        nearest = candidate;
    }
    return nearest;
}

}  // namespace coutil::text_formats
