#pragma once

#include <QString>

#include "core/revision/folio.h"
#include "core/revision/timeline.h"
#include "core/units/length.h"

namespace coutil {

// One entry of a garment's timeline in words.
struct EntryWords {
    QString name;  // "block", "rev 2", "fitting", "pencil", a pencil's own name
    QString day;  // "18 Mar", with the year where it is another than `yearBefore`; none for pencils
};
[[nodiscard]] EntryWords entryWords(const Garment& garment, const TimelineEntry& entry,
                                    int yearBefore);

// The year of an entry's date, 0 where it has none.
[[nodiscard]] int yearOf(const TimelineEntry& entry);

// For a screen reader: what it is, its whole date, what it comes from, whether it is shown.
[[nodiscard]] QString entryAccessibleName(const Folio& folio, const Garment& garment,
                                          const TimelineEntry& entry, bool isShown);

// What hovering shows, as rich text: name and date, who, what changed since the parent or what was
// marked, the note. Long lists are cut, and say so.
[[nodiscard]] QString entryToolTip(const Folio& folio, const Garment& garment,
                                   const TimelineEntry& entry);

// A revision that is the block as it was drafted.
[[nodiscard]] bool isBlock(const Revision& revision);

}  // namespace coutil
