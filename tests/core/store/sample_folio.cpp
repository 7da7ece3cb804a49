#include "tests/core/store/sample_folio.h"

#include <string>

namespace coutil::test {
namespace {

MeasurementSet firstSet(int variant) {
    MeasurementSet set;
    set.id = "5c2f1b52-0001-4000-8000-000000000001";
    set.takenOn = "2026-03-02";
    set.takenBy = "client";
    set.note = "over a thin shirt; \"laced\" girths guessed\nsecond line";
    set.unit = LengthUnit::inch;
    set.valuesMm = {{Measurement::bustGirth, 960.0 + variant},
                    {Measurement::waistGirth, 30.25 * 25.4},
                    {Measurement::hipGirth, 1.0 / 3.0 + 1000},
                    {Measurement::waistToHip, 205.125}};
    set.asWritten = {{Measurement::waistGirth, "30 1/4 in"}, {Measurement::bustGirth, "96 cm"}};
    return set;
}

Style fullStyle(int variant) {
    Style style;
    style.panelsPerHalf = 6;
    style.lacingGapMm = 40 + variant;
    style.lacingGapAtMm = {{LevelId::waist, 60}};
    style.easeMm = {{LevelId::bust, 5}, {LevelId::waist, -70.5}, {LevelId::highHip, 0}};
    style.front = FrontClosure::fold;
    style.topEdge = {TopShape::pointed, 210, 235.5, 160, 150, {{"3-4", 171}, {"5-6", 140.25}}};
    style.bottomEdge = {BottomShape::dipped, 130, 90, 110, {{"2-3", 101}}};
    style.frontShare = 0.52;
    style.panelShares = {1, 1.1, 0.9, 1, 1.05, 0.8};
    style.seamShares = {{LevelId::waist, {0.1, 0.2, 0.3, 0.2, 0.2}}};
    style.frontPart = {{"2-3", 0.6}};
    style.ownLevels = {{"peplum", -60}, {"Taillenband über der Naht", 12.5}};
    style.allowance = {12, 20, false, true, 8, {{"3/seam 2-3", 15}}};
    return style;
}

}  // namespace

Folio sampleFolio(int variant) {
    Folio folio;
    folio.id = "5c2f1b52-0002-4000-8000-000000000001";
    folio.client = "Soubrette, second cast (Mühlbach) " + std::to_string(variant);
    folio.note = "sings lying down in act two";
    folio.unit = LengthUnit::inch;
    MeasurementSet second = firstSet(variant);
    second.id = "5c2f1b52-0001-4000-8000-000000000002";
    second.takenOn = "2026-04-20";
    second.asWritten.clear();
    folio.measurementSets = {firstSet(variant), second};
    const Garment act1{.id = "5c2f1b52-0003-4000-8000-000000000001",
                       .name = "act one",
                       .createdOn = "2026-03-03",
                       .pencils = {{"5c2f1b52-0004-4000-8000-000000000001", "2026-03-03", second.id,
                                    fullStyle(variant)}}};
    const Garment act2{
        .id = "5c2f1b52-0003-4000-8000-000000000002",
        .name = "act two",
        .createdOn = "2026-04-21",
        .pencils = {{"5c2f1b52-0004-4000-8000-000000000002", "2026-04-22", second.id, Style{}}}};
    folio.garments = {act1, act2};
    return folio;
}

}  // namespace coutil::test
