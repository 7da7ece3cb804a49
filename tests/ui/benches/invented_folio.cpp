#include "tests/ui/benches/invented_folio.h"

namespace coutil {

Folio inventedFolio() {
    MeasurementSet set;
    set.id = "00000000-0000-4000-8000-000000000001";
    set.takenOn = "2026-03-02";
    set.valuesMm = {{Measurement::bustGirth, 960},      {Measurement::underBustGirth, 820},
                    {Measurement::waistGirth, 760},     {Measurement::hipGirth, 1020},
                    {Measurement::bustPointWidth, 190}, {Measurement::waistToUnderBust, 80},
                    {Measurement::waistToBust, 170},    {Measurement::waistToArmpit, 220},
                    {Measurement::waistToHighHip, 100}, {Measurement::waistToHip, 200}};
    Garment garment;
    garment.id = "00000000-0000-4000-8000-000000000002";
    garment.name = "Chorus bodice";
    garment.createdOn = "2026-03-02";
    garment.pencils = {{.id = "00000000-0000-4000-8000-000000000003",
                        .startedOn = "2026-03-02",
                        .measurementSet = set.id,
                        .style = {}}};
    Folio folio;
    folio.id = "00000000-0000-4000-8000-000000000004";
    folio.client = "Alto 3";
    folio.measurementSets = {set};
    folio.garments = {garment};
    return folio;
}

}  // namespace coutil
