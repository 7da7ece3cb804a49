#pragma once

#include <string>

#include "app/command_line/call.h"
#include "core/problems/problem.h"
#include "core/revision/draft_garment.h"
#include "core/revision/folio.h"
#include "core/store/text_formats.h"
#include "core/tracing/tracing.h"

namespace coutil {

// The revision of a garment that a call is about, drafted.
struct OpenedGarment {
    Folio folio;
    Garment garment;
    GarmentOutcome outcome;
    RevisionHead head;
};

// Reads the call's folio and finds the garment of --garment (the only one, if not given) and the
// revision of --revision (pencil, latest). Problems: as readFolio, garmentUnknown, callIncomplete
// when there are several garments and none is named, revisionUnknown, dateUnreadable, and those of
// the draft when there is no pattern.
[[nodiscard]] Outcome<OpenedGarment> openGarment(const Call& call);

// Title of the drawings: the client's name is left out with --no-name; --date stands for the date
// of the revision.
[[nodiscard]] TracingTitle titleFor(const OpenedGarment& opened, const Call& call);

// The drafted outcome of one garment of a folio.
[[nodiscard]] GarmentOutcome draftedIn(const Folio& folio, const Garment& garment);

// Checks --revision and --date; nothing when they are sound.
[[nodiscard]] std::optional<Problem> checkRevision(const Call& call);
[[nodiscard]] std::optional<Problem> checkDate(const Call& call);

// The garments a call is about: that of --garment, or all.
[[nodiscard]] Outcome<std::vector<Garment>> chosenGarments(const Folio& folio, const Call& call);

}  // namespace coutil
