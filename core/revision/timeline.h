#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/revision/folio.h"

namespace coutil {

enum class TimelineKind { revision, fitting, pencil };

// One entry of a timeline. `index` is its place in the garment's own list of that kind.
struct TimelineEntry {
    TimelineKind kind = TimelineKind::revision;
    std::size_t index = 0;
    std::string date;  // ISO 8601: confirmed on, held on, started on
    // Entry it comes from: a revision's or pencil's parent, what a fitting tried. Nothing for a
    // block, and where the parent is a revision of another garment.
    std::optional<std::size_t> parent{};
    // The line of the drawing it stands on: 0 for the first, a new one for every branch. A fitting
    // stands on the line of what it tried.
    std::size_t lane = 0;

    bool operator==(const TimelineEntry&) const = default;
};

// Revisions and fittings in the order of their dates, then the pencils in the order they were
// begun. An entry never stands before its parent, whatever dates were typed; a fitting of a pencil
// alone does, since pencils stand at the end. On one day: a revision, its fittings, the next
// revision.
[[nodiscard]] std::vector<TimelineEntry> timelineOf(const Garment& garment);

// The revision and its parents back to the block, newest first, also through other garments. Ends
// early where a parent is not in the folio.
[[nodiscard]] std::vector<const Revision*> chainOf(const Folio& folio, const Revision& revision);

}  // namespace coutil
