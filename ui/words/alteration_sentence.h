#pragma once

#include <QString>
#include <QStringList>
#include <span>

#include "core/alterations/alteration.h"
#include "core/revision/folio.h"
#include "core/units/length.h"

namespace coutil {

// One alteration in words of its own, lengths in `unit`: "seam 2-3: 4 mm in at +35 mm, left";
// "lengthened 10 mm at the waist, from centre back to nothing at seam 3-4". Without its reason.
[[nodiscard]] QString alterationSentence(const Alteration& alteration, LengthUnit unit);

// The same for several that follow each other, in their order; those switched off are left out.
// `before` is the style in force before the first of them: a change of style then names what it
// changes. New measurements are told with their date. Both may be missing.
struct SentenceGround {
    const Folio* folio = nullptr;
    const Style* before = nullptr;
};
[[nodiscard]] QStringList alterationSentences(std::span<const Alteration> alterations,
                                              const SentenceGround& ground, LengthUnit unit);

}  // namespace coutil
