#pragma once

#include <cstddef>
#include <string>

#include "app/command_line/call.h"
#include "core/problems/problem.h"
#include "core/revision/draft_garment.h"
#include "core/revision/folio.h"
#include "core/store/text_formats.h"
#include "core/tracing/tracing.h"

namespace coutil {

// One state of a garment: a confirmed revision or a pencil, the other is empty.
struct ChosenRevision {
    std::string revision;  // digest
    std::string pencil;    // id
};

// The revision of a garment that a call is about, drafted.
struct OpenedGarment {
    Folio folio;
    std::size_t garmentIndex = 0;
    ChosenRevision chosen;
    GarmentOutcome outcome;
    RevisionHead head;

    [[nodiscard]] const Garment& garment() const { return folio.garments[garmentIndex]; }
};

// Reads the call's folio and finds the garment of --garment (the only one, if not given) and the
// revision of --revision. Problems: as readFolio, garmentUnknown, callIncomplete when there are
// several garments and none is named, revisionUnknown, dateUnreadable, and those of the draft when
// there is no pattern.
[[nodiscard]] Outcome<OpenedGarment> openGarment(const Call& call);

// The steps of it. Which garment of a folio the call is about; which state of it an ID is: a
// number, "pencil" (--pencil says which, where there are several), or "latest" (the newest pencil,
// else the last revision); what follows from it; what `--json` says of it.
[[nodiscard]] Outcome<std::size_t> chosenGarment(const Folio& folio, const Call& call);
[[nodiscard]] Outcome<ChosenRevision> chosenRevision(const Garment& garment, const std::string& id,
                                                     const Call& call);
[[nodiscard]] GarmentOutcome outcomeOf(const Folio& folio, const Garment& garment,
                                       const ChosenRevision& chosen);
[[nodiscard]] RevisionHead headOf(const Folio& folio, const Garment& garment,
                                  const ChosenRevision& chosen);

// Title of the drawings: the client's name is left out with --no-name; --date stands for the date
// of a pencil.
[[nodiscard]] TracingTitle titleFor(const OpenedGarment& opened, const Call& call);

// Checks --date; nothing when it is sound.
[[nodiscard]] std::optional<Problem> checkDate(const Call& call);

// Indices of the garments a call is about: that of --garment, or all.
[[nodiscard]] Outcome<std::vector<std::size_t>> chosenGarments(const Folio& folio,
                                                               const Call& call);

}  // namespace coutil
