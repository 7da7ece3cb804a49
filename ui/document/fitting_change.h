#pragma once

#include <string>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"
#include "ui/document/pencil_change.h"

namespace coutil {

// The folio with one more fitting of a garment; fittings stay in the order of their dates.
[[nodiscard]] Folio withFittingAdded(const Folio& folio, int garmentIndex, const Fitting& fitting);

// Without one. What its marks asked for goes from every pencil; photos that no other fitting shows
// go too.
[[nodiscard]] Folio withFittingRemoved(const Folio& folio, int garmentIndex, const std::string& id);

// True where the marks of a fitting are drawn: on what was tried, and on pencils begun from it.
[[nodiscard]] bool isDrawnOn(const Fitting& fitting, const Pencil& pencil);
[[nodiscard]] bool isDrawnOn(const Fitting& fitting, const Revision& revision);

// The alterations of a pencil that came from these marks.
[[nodiscard]] std::vector<Alteration> alterationsOf(const Pencil& pencil,
                                                    const std::vector<Mark>& marks);

// A folio in which a fitting became `after`, and what its marks ask for was drawn again in the
// pencil shown (where it is drawn there), in place of what they asked for before. Over a revision a
// pencil begins as soon as they ask for something. A mark that does not fit is named.
struct FittingChange {
    PencilChange change;
    std::vector<Problem> problems;
};
[[nodiscard]] FittingChange withFittingChanged(const Folio& folio, int garmentIndex,
                                               const std::string& shown, const Revision* revision,
                                               const Fitting& after);

}  // namespace coutil
