// From pencil to ink: numbers, parents, refusals; pencils begun, copied and rubbed out.
#include "core/revision/confirm.h"

#include <limits>

#include <gtest/gtest.h>

#include "core/revision/draft_garment.h"
#include "core/revision/ink.h"
#include "core/revision/pencils.h"
#include "core/revision/recipe.h"
#include "core/revision/timeline.h"
#include "tests/bodies/ansur_bodies.h"
#include "tests/core/revision/history_sample.h"

namespace coutil {
namespace {

using test::blockFolio;
using test::takenIn;

std::string namesOf(const Recipe& recipe) {
    std::string names = recipe.measurements.id;
    for (const Alteration& alteration : recipe.alterations) names.append(" ").append(alteration.id);
    return names;
}

class Confirming : public testing::Test {
  protected:
    const MeasurementSet body_ = bodies::ansurBodies().at(17);
    const Pattern pattern_ = draftGarment(body_, Style{}).pattern.value();
    const Folio begun_ = blockFolio(body_);

    [[nodiscard]] Folio inked(const Folio& folio, const std::string& pencil,
                              const std::string& date) const {
        const auto next = test::confirmedOn(folio, pencil, pattern_, date, namesOf);
        EXPECT_TRUE(next);
        return next ? *next : folio;
    }
    // Revision 1 the block, 2 with one alteration, 3 branched from 1.
    [[nodiscard]] Folio branched() const {
        Folio folio = inked(begun_, "block", "2026-03-10");
        folio = *pencilBegun(folio, 0, folio.garments[0].revisions[0]->digest(),
                             {"second", "2026-03-14"});
        folio.garments[0].pencils[0].alterations = {takenIn("a", "2-3", 8)};
        folio = inked(folio, "second", "2026-03-20");
        folio = *pencilBegun(folio, 0, folio.garments[0].revisions[0]->digest(),
                             {"third", "2026-03-22"});
        return inked(folio, "third", "2026-03-24");
    }
};

std::vector<ProblemCode> codesOf(const std::vector<Problem>& problems) {
    std::vector<ProblemCode> codes;
    for (const Problem& problem : problems) codes.push_back(problem.code);
    return codes;
}

Problem standing(Severity severity) {
    Problem problem;
    problem.code = ProblemCode::seamLengthsDiffer;
    problem.severity = severity;
    problem.subject = "2-3";
    problem.panel = "2";
    return problem;
}

TEST_F(Confirming, makesARevisionAndTakesThePencil) {
    const Folio folio = inked(begun_, "block", "2026-03-10");
    const Garment& garment = folio.garments[0];
    EXPECT_TRUE(garment.pencils.empty());
    ASSERT_EQ(garment.revisions.size(), 1U);
    const RevisionContent& content = garment.revisions[0]->content();
    EXPECT_EQ(content.garment, "g1");
    EXPECT_EQ(content.number, 1);
    EXPECT_EQ(content.confirmedOn, "2026-03-10");
    EXPECT_EQ(content.confirmedBy, "wardrobe");
    EXPECT_EQ(content.note, "note of 2026-03-10");
    EXPECT_EQ(content.parent, "");
    EXPECT_EQ(content.errorsAccepted, "");
    EXPECT_EQ(content.pattern, onInkGrid(pattern_));
    EXPECT_EQ(garment.revisions[0]->recipeText(), "set of March");
    EXPECT_EQ(folio.measurementSets, begun_.measurementSets);
}

TEST_F(Confirming, refusesWhileErrorsStandUnlessTheMakerSaysWhy) {
    const DraftedPencil drafted{pattern_, {standing(Severity::warning), standing(Severity::error)}};
    Confirmation said{"2026-03-10", "wardrobe", ""};
    const auto refused = pencilConfirmed(begun_, 0, "block", drafted, said, namesOf);
    ASSERT_FALSE(refused);
    EXPECT_EQ(codesOf(refused.problems),
              (std::vector{ProblemCode::confirmRefused, ProblemCode::seamLengthsDiffer}));
    EXPECT_EQ(refused.problems[0].subject, "act one");
    said.reason = "eased in by hand";
    const auto accepted = pencilConfirmed(begun_, 0, "block", drafted, said, namesOf);
    ASSERT_TRUE(accepted);
    EXPECT_EQ(accepted->garments[0].revisions[0]->content().errorsAccepted,
              "eased in by hand\nseam_lengths_differ 2-3 2");
    const auto warned =
        pencilConfirmed(begun_, 0, "block", {pattern_, {standing(Severity::warning)}},
                        {"2026-03-10", "", ""}, namesOf);
    ASSERT_TRUE(warned);
    EXPECT_EQ(warned->garments[0].revisions[0]->content().errorsAccepted, "");
}

TEST_F(Confirming, noReasonMakesInkOfNothing) {
    const Confirmation said{"2026-03-10", "wardrobe", "", "all the same"};
    EXPECT_FALSE(pencilConfirmed(begun_, 0, "block", {std::nullopt, {}}, said, namesOf));
    Pattern broken = pattern_;
    broken.panels[0].edges[0].path.pieces[0].p1.x() = std::numeric_limits<double>::infinity();
    const auto refused = pencilConfirmed(begun_, 0, "block", {broken, {}}, said, namesOf);
    EXPECT_EQ(codesOf(refused.problems), std::vector{ProblemCode::confirmRefused});
}

TEST_F(Confirming, wrongCallsAreNamed) {
    const auto unknown = test::confirmedOn(begun_, "none", pattern_, "2026-03-10", namesOf);
    EXPECT_EQ(codesOf(unknown.problems), std::vector{ProblemCode::pencilMissing});
    const auto noDay = test::confirmedOn(begun_, "block", pattern_, "10.3.2026", namesOf);
    EXPECT_EQ(codesOf(noDay.problems), std::vector{ProblemCode::dateUnreadable});
    EXPECT_EQ(noDay.problems[0].detail, "10.3.2026");
    Folio unmeasured = begun_;
    unmeasured.measurementSets.clear();
    const auto noSet = test::confirmedOn(unmeasured, "block", pattern_, "2026-03-10", namesOf);
    EXPECT_EQ(codesOf(noSet.problems), std::vector{ProblemCode::measurementMissing});
}

TEST_F(Confirming, numbersRiseAndParentsAreLinked) {
    const Folio folio = branched();
    const auto& revisions = folio.garments[0].revisions;
    ASSERT_EQ(revisions.size(), 3U);
    for (int i = 0; i < 3; ++i) EXPECT_EQ(revisions[static_cast<std::size_t>(i)]->number(), i + 1);
    EXPECT_EQ(revisions[1]->content().parent, revisions[0]->digest());
    EXPECT_EQ(revisions[2]->content().parent, revisions[0]->digest());
    EXPECT_EQ(revisions[1]->recipeText(), "set of March a");
    EXPECT_EQ(revisions[2]->recipeText(), "set of March");
    const auto chain = chainOf(folio, *revisions[1]);
    ASSERT_EQ(chain.size(), 2U);
    EXPECT_EQ(chain[1]->content().note, "note of 2026-03-10");
}

TEST_F(Confirming, theRecipeIsTheParentsAndThenThePencils) {
    Folio folio = branched();
    folio = *pencilBegun(folio, 0, folio.garments[0].revisions[1]->digest(), {"p", "2026-04-01"});
    Pencil& pencil = folio.garments[0].pencils[0];
    pencil.alterations = {takenIn("b", "1-2", 4), takenIn("off", "1-2", 9)};
    pencil.alterations[1].isOn = false;
    // Put right since: the revision's snapshot stays.
    folio.measurementSets[0].valuesMm[Measurement::waistGirth] = 1;
    folio.measurementSets.push_back(body_);
    folio.measurementSets[1].id = "set of May";
    EXPECT_EQ(namesOf(*recipeOf(folio, pencil)), "set of March a b");
    EXPECT_EQ(recipeOf(folio, pencil)->measurements.valuesMm, body_.valuesMm);
    Style curved;
    curved.lacingGapMm = 33;
    pencil.alterations.push_back({.id = "c", .change = ChangeStyle{curved}});
    pencil.alterations.push_back({.id = "d", .change = TakeMeasurements{"set of May"}});
    EXPECT_EQ(namesOf(*recipeOf(folio, pencil)), "set of May a b c d");
    EXPECT_EQ(recipeOf(folio, pencil)->style, curved);
    pencil.parent = "lost";
    EXPECT_EQ(codesOf(recipeOf(folio, pencil).problems),
              std::vector{ProblemCode::revisionParentMissing});
}

TEST_F(Confirming, aGarmentStartsFromAnothersRevision) {
    const Folio folio = branched();
    const std::string parent = folio.garments[0].revisions[1]->digest();
    const Garment act2{.id = "g2", .name = "act two", .createdOn = "2026-05-01"};
    auto both = garmentBegun(folio, act2, parent, {"q", "2026-05-01"});
    ASSERT_TRUE(both);
    const Pencil& pencil = both->garments[1].pencils.at(0);
    EXPECT_EQ(pencil.parent, parent);
    EXPECT_EQ(pencil.measurementSet, "set of March");
    both = pencilConfirmed(*both, 1, "q", {pattern_, {}}, {"2026-05-02", "", ""}, namesOf);
    ASSERT_TRUE(both);
    EXPECT_EQ(both->garments[1].revisions[0]->number(), 1);
    EXPECT_EQ(both->garments[1].revisions[0]->recipeText(), "set of March a");
    EXPECT_EQ(chainOf(*both, *both->garments[1].revisions[0]).size(), 3U);
    EXPECT_FALSE(timelineOf(both->garments[1])[0].parent);
    EXPECT_EQ(codesOf(garmentBegun(*both, act2, parent, {"r", ""}).problems),
              std::vector{ProblemCode::garmentTaken});
    EXPECT_EQ(codesOf(pencilBegun(*both, 0, "none", {"r", ""}).problems),
              std::vector{ProblemCode::revisionUnknown});
}

TEST_F(Confirming, severalPencilsAtOnce) {
    Folio folio = begun_;
    folio.garments[0].pencils[0].alterations = {takenIn("a", "2-3", 8)};
    folio = *pencilCopied(folio, 0, "block", {"other", "2026-03-05", "with a gusset"});
    ASSERT_EQ(folio.garments[0].pencils.size(), 2U);
    EXPECT_EQ(folio.garments[0].pencils[1].alterations, folio.garments[0].pencils[0].alterations);
    EXPECT_EQ(folio.garments[0].pencils[1].name, "with a gusset");
    const Folio one = *pencilRubbedOut(folio, 0, "block");
    EXPECT_EQ(one.garments[0].pencils.at(0).id, "other");
    const Folio confirmed = inked(folio, "other", "2026-03-10");
    EXPECT_EQ(confirmed.garments[0].pencils.at(0).id, "block");
    EXPECT_EQ(codesOf(pencilRubbedOut(one, 0, "block").problems),
              std::vector{ProblemCode::pencilMissing});
    EXPECT_EQ(codesOf(pencilCopied(one, 0, "block", {"x", ""}).problems),
              std::vector{ProblemCode::pencilMissing});
}

TEST_F(Confirming, theTimelineIsByDateWithItsBranches) {
    Folio folio = branched();
    Garment& garment = folio.garments[0];
    const std::string one = garment.revisions[0]->digest();
    const std::string two = garment.revisions[1]->digest();
    garment.fittings = {{.id = "f", .heldOn = "2026-03-14", .revision = one},
                        {.id = "g", .heldOn = "2026-03-24", .revision = two},
                        {.id = "h", .heldOn = "2026-03-20", .revision = two}};
    folio = *pencilBegun(folio, 0, two, {"p", "2026-03-25"});
    folio = *pencilBegun(folio, 0, two, {"q", "2026-03-01"});
    const auto entries = timelineOf(folio.garments[0]);
    using Kind = TimelineKind;
    const std::vector<TimelineEntry> expected{
        {Kind::revision, 0, "2026-03-10", {}, 0}, {Kind::fitting, 0, "2026-03-14", 0, 0},
        {Kind::revision, 1, "2026-03-20", 0, 0},  {Kind::fitting, 2, "2026-03-20", 2, 0},
        {Kind::fitting, 1, "2026-03-24", 2, 0},   {Kind::revision, 2, "2026-03-24", 0, 1},
        {Kind::pencil, 0, "2026-03-25", 2, 0},    {Kind::pencil, 1, "2026-03-01", 2, 2}};
    EXPECT_EQ(entries, expected);
}

TEST_F(Confirming, noEntryStandsBeforeItsParent) {
    Folio folio = inked(begun_, "block", "2026-03-10");
    const std::string one = folio.garments[0].revisions[0]->digest();
    folio = *pencilBegun(folio, 0, one, {"second", "2026-03-14"});
    folio = inked(folio, "second", "2025-03-20");  // the year mistyped
    folio.garments[0].fittings = {{.id = "f", .heldOn = "2024-01-01", .revision = one},
                                  {.id = "g", .heldOn = "2024-01-01", .pencil = "block"}};
    const auto entries = timelineOf(folio.garments[0]);
    ASSERT_EQ(entries.size(), 4U);
    EXPECT_EQ(entries[0].kind, TimelineKind::fitting);
    EXPECT_FALSE(entries[0].parent);
    for (std::size_t i = 1; i < entries.size(); ++i) EXPECT_LT(entries[i].parent.value_or(0), i);
    EXPECT_EQ(entries[3].index, 1U);
}

}  // namespace
}  // namespace coutil
