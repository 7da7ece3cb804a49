#include "tests/core/store/sample_folio.h"

#include <string>
#include <utility>

#include "core/revision/ink.h"
#include "core/store/text_formats.h"

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

// Two panels, drawn by hand; what the store keeps need not be sewable.
Pattern smallPattern(double widthMm) {
    const auto corner = [&](double x, double y) { return Point(x * widthMm, y); };
    const auto panel = [&](const std::string& name) {
        Panel drawn{.name = name};
        const auto add = [&](const std::string& edge, EdgeRole role, Point a, Point b, bool up) {
            drawn.edges.push_back({edge, role, straightPath(a, b), 60.0625, up});
        };
        add("bottom", EdgeRole::bottom, corner(0, -60.0625), corner(1, -70), false);
        add("seam 1-2", EdgeRole::seam, corner(1, -70), corner(1.1, 130), true);
        add("top", EdgeRole::top, corner(1.1, 130), corner(0, 150), false);
        add("centre front", EdgeRole::opening, corner(0, 150), corner(0, -60.0625), false);
        drawn.levels = {{"Taillenband über der Naht", corner(0, 12.5), corner(1, 12.5)}};
        drawn.grain = {corner(0.5, -50), corner(0.5, 100)};
        return drawn;
    };
    Pattern pattern;
    pattern.panels = {panel("1"), panel("2")};
    pattern.seams = {{"1-2", {0, 1}, {1, 1}, 0}};
    pattern.levels = {{"waist", 0, 760, 700, 700.0004, 50}, {"peplum", -60}};
    pattern.lacingGapMm = 50;
    pattern.estimates = {{Measurement::topHipGirth, 905.5, 24, {Measurement::hipGirth}, "a table"}};
    return pattern;
}

OpenPanel opened(const std::string& edge, double mm) {
    OpenPanel change;
    change.panel = "2";
    change.mouth.edge = edge;
    change.mouth.alongMm = 30;
    change.amountMm = mm;
    return change;
}

ChangeLength lengthened(double mm) {
    ChangeLength change;
    change.amountMm = mm;
    return change;
}

// One of every kind, every member set to something that is not its default.
std::vector<Alteration> everyKind(int variant) {
    std::vector<Change> changes;
    changes.emplace_back(
        ShapeSeam{"2-3", {{35, 8.0 + variant}, {120, 0.1}}, {50}, {std::nullopt}, 0.25});
    changes.emplace_back(opened("top", 6));
    std::get<OpenPanel>(changes.back()).hinge.emplace(EdgePlace{"seam 2-3", -20});
    changes.emplace_back(opened("bottom", -6));
    std::get<OpenPanel>(changes.back()).slitLengthMm = 80;
    changes.emplace_back(lengthened(12));
    std::get<ChangeLength>(changes.back()).at.level = "bust";
    std::get<ChangeLength>(changes.back()).taper.emplace(Taper{"centre back", "seam 2-3"});
    changes.emplace_back(lengthened(-3.3));
    std::get<ChangeLength>(changes.back()).at.heightMm = -40;
    changes.emplace_back(ReshapeEdge{
        EdgeLine::bottom, {{{"2-3", "", 0}, 5}, {{"", "1", 22}, -2}}, {std::nullopt}, {33}});
    changes.emplace_back(MoveLevel{"bust", 7, -3});
    changes.emplace_back(MoveCorner{"3", "seam 2-3", EdgeLine::bottom, {1, -2.5}});
    changes.emplace_back(MoveHandle{"3", "top", 2, 2, {0.5, 0.25}});
    changes.emplace_back(SplitPanel{"2", 40, 55});
    changes.emplace_back(JoinPanels{"3-4"});
    changes.emplace_back(MakeSymmetric{SymmetrySource::right});
    changes.emplace_back(ChangeStyle{fullStyle(variant)});
    changes.emplace_back(TakeMeasurements{"5c2f1b52-0001-4000-8000-000000000001"});
    std::vector<Alteration> alterations;
    for (const Change& change : changes) {
        alterations.push_back({.id = "alteration " + std::to_string(alterations.size()),
                               .side = BodySide(alterations.size() % 3),
                               .change = change,
                               .why = "tight \"when\" seated",
                               .marks = {"mark 0", "mark 3"},
                               .isOn = alterations.size() % 5 != 4});
    }
    return alterations;
}

std::vector<Mark> everyMark(int variant) {
    const double mm = 4.5 + variant;
    return {
        {"mark 0", MarkKind::pinned, SeamPlace{"2-3", 35}, mm, BodySide::left, "client", "soft",
         PhotoSpot{"photo 1", 0.25, 0.75}, true},
        {"mark 1", MarkKind::opened, SlitPlace{"2", EdgeLine::bottom, 30, 70}, 6},
        {"mark 2", MarkKind::pinned, TuckPlace{"3", -35}, 5, BodySide::right},
        {"mark 3", MarkKind::raise, OnLinePlace{EdgeLine::top, {"1-2", "", 0}}, 9},
        {"mark 4", MarkKind::lower, OnLinePlace{EdgeLine::bottom, {"", "2", 25}}, 9},
        {"mark 5", MarkKind::longer, HeightPlace{"waist", 0}, 8},
        {"mark 6", MarkKind::shorter, HeightPlace{"", 60}, 8},
        {"mark 7", MarkKind::bustPointHigher, {}, 6},
        {"mark 8",
         MarkKind::bonePokes,
         SeamPlace{"3-4", -80},
         0,
         BodySide::both,
         "",
         "at the hip",
         {},
         false},
    };
}

Shared<Revision> inked(const Garment& garment, int number, const std::string& parent,
                       const std::vector<Alteration>& alterations) {
    RevisionContent content{.garment = garment.id,
                            .number = number,
                            .confirmedOn = "2026-04-1" + std::to_string(number),
                            .confirmedBy = "wardrobe",
                            .note = "let out at the hip; \"much\" better\nstays",
                            .parent = parent,
                            .recipe = {firstSet(0), fullStyle(0), alterations},
                            .pattern = smallPattern(80 + number),
                            .errorsAccepted = "eased in by hand\nseam_lengths_differ 1-2 1"};
    std::string recipe = writeRecipeJson(content.recipe);
    return inkOver(std::move(content), std::move(recipe));
}

void putHistory(Folio& folio, int variant) {
    Garment& one = folio.garments[0];
    Garment& two = folio.garments[1];
    one.revisions = {inked(one, 1, "", {})};
    one.revisions.push_back(inked(one, 2, one.revisions[0]->digest(), everyKind(0)));
    one.revisions.push_back(inked(one, 3, one.revisions[0]->digest(), {}));
    two.revisions = {inked(two, 1, one.revisions[1]->digest(), {})};
    Pencil second = one.pencils[0];
    second.id = "5c2f1b52-0004-4000-8000-000000000003";
    second.name = "with a gusset";
    second.parent = one.revisions[1]->digest();
    second.alterations = everyKind(variant);
    second.setAside = {{"seam_too_curved", "2-3", "2", "boned beside the seam"},
                       {"kink_in_curve", "", "", std::to_string(variant)}};
    one.pencils.push_back(second);
    two.pencils.clear();
    one.fittings = {{"fitting 1",
                     "2026-04-12",
                     FittingKind::posted,
                     "client",
                     one.revisions[0]->digest(),
                     "",
                     "sent by post",
                     everyMark(variant),
                     {"photo 2", "photo 1"}},
                    {"fitting 2", "2026-04-14", FittingKind::inPerson, "", "", one.pencils[0].id}};
    folio.photos = {Photo{"photo 1", "from behind", "2026-04-12", 640, 480,
                          std::string("\xFF\xD8\0\xFF", 4) + std::string(9000, 'j')},
                    Photo{"photo 2", std::to_string(variant), "2026-04-12", 1, 2, "x"}};
}

MakingUpChoices fullMakingUp(int variant) {
    MakingUpChoices choices;
    choices.channels.clearanceMm = 2.5;
    choices.channels.straightSeam = {2, 120, 300.5};
    choices.channels.hasPanelMiddles = true;
    choices.channels.hasFront = false;
    choices.channels.seamBone = {BoneKind::synthetic, 5.5};
    choices.channels.byHand = {{"seam 2-3", PanelSide::left, false},
                               {.channel = "bone for the \"poke\"",
                                .bone = BoneType{BoneKind::flatSteel, 12},
                                .carrier = ChannelCarrier::ownAllowance,
                                .bottomMm = -80,
                                .topMm = 60.25,
                                .line = ChannelLine{"2", 30, 28}}};
    choices.bones.stepMm = 12.7 + variant;
    choices.bones.stock = {{{BoneKind::spiralSteel, 6}, {10000, 25000}, 3}, {{}, {}, 0}};
    choices.eyelets.pitchMm = 20;
    choices.busk.lengthsMm = {250, 330.2};
    choices.waistTape.isWanted = false;
    choices.binding.finishedMm = 10;
    choices.layers = {{.key = "Futter",
                       .panels = {"1", "3"},
                       .seamAllowanceMm = 20,
                       .additions = {{"5", "centre back", 40}}}};
    choices.materials = {0.15, "crowns", {{"cloth/strength", 12.5}}};
    return choices;
}

TracingChoices fullTracing() {
    TracingChoices choices;
    choices.layer = "Futter";
    choices.notchShape = NotchShape::vee;
    choices.lines = LinesShown::sewing;
    choices.byHand = {{"2", PanelSide::right, 90.5, Point(12, -3.5), -90, 0.75}, {"3"}};
    return choices;
}

}  // namespace

Folio sampleFolio(int variant) {
    Folio folio = sampleHistory(variant);
    folio.garments[0].makingUp = fullMakingUp(variant);
    folio.garments[0].tracing = fullTracing();
    return folio;
}

Folio sampleHistory(int variant) {
    Folio folio = sampleBlocks(variant);
    putHistory(folio, variant);
    return folio;
}

Folio sampleBlocks(int variant) {
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
