#include "tests/ui/timeline/grown_garment.h"

#include "core/revision/confirm.h"
#include "core/revision/pencil_outcome.h"
#include "core/revision/pencils.h"
#include "core/store/text_formats.h"
#include "tests/ui/window/singer.h"

namespace coutil {

namespace {

Alteration takenIn(double mm) {
    Alteration alteration;
    alteration.id = "taken in " + std::to_string(mm);
    alteration.change = ShapeSeam{"2-3", {{0, mm}}};
    alteration.why = "loose";
    return alteration;
}

}  // namespace

std::string digestOf(const Folio& folio, int number) {
    return findRevision(folio.garments.front(), number)->digest();
}

Folio withPencil(const Folio& folio, const std::string& parent, const std::string& id,
                 const std::string& name) {
    return *pencilBegun(folio, 0, parent, {.id = id, .startedOn = "2026-05-02", .name = name});
}

Folio withConfirmed(const Folio& folio, const std::string& parent, double takenInMm,
                    const std::string& day) {
    Folio begun = parent.empty() ? folio : withPencil(folio, parent, "to be confirmed");
    Pencil& pencil = begun.garments.front().pencils.back();
    if (takenInMm != 0) pencil.alterations.push_back(takenIn(takenInMm));
    const GarmentOutcome drafted = pencilOutcome(begun, pencil);
    return pencilConfirmed(begun, 0, pencil.id, {drafted.pattern, {}},
                           {.on = day, .by = "Mira", .note = "what was seen"}, writeRecipeJson)
        .value.value();
}

Folio withFitting(const Folio& folio, const std::string& revision, const std::string& day) {
    Folio after = folio;
    Fitting fitting;
    fitting.id = "fitting of " + day;
    fitting.heldOn = day;
    fitting.how = FittingKind::posted;
    fitting.readBy = "client";
    fitting.revision = revision;
    fitting.marks.resize(2);
    after.garments.front().fittings.push_back(fitting);
    return after;
}

Folio grownFolio() {
    Folio folio = withConfirmed(singersFolio(), {}, 0, "2026-03-02");
    folio = withFitting(folio, digestOf(folio, 1), "2026-03-14");
    folio = withConfirmed(folio, digestOf(folio, 1), 4, "2026-03-18");
    folio = withFitting(folio, digestOf(folio, 2), "2026-04-09");
    folio = withConfirmed(folio, digestOf(folio, 2), 3, "2026-04-11");
    folio = withConfirmed(folio, digestOf(folio, 1), -6, "2026-04-20");
    folio = withPencil(folio, digestOf(folio, 3), "main pencil");
    return withPencil(folio, digestOf(folio, 4), "side pencil", "wider hip");
}

}  // namespace coutil
