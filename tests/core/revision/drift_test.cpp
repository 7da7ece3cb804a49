// Drafting confirmed revisions again: by unchanged rules the ink itself, else a note.
#include "core/revision/drift.h"

#include <gtest/gtest.h>

#include "core/geometry/tolerances.h"
#include "core/revision/ink.h"
#include "core/revision/pencil_outcome.h"
#include "core/revision/pencils.h"
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

Folio confirmed(const Folio& folio, const std::string& pencil, const std::string& reason = {}) {
    const GarmentOutcome outcome = pencilOutcome(folio, *findPencil(folio.garments[0], pencil));
    const auto next = pencilConfirmed(folio, 0, pencil, {outcome.pattern, outcome.problems},
                                      {"2026-03-10", "wardrobe", "", reason}, namesOf);
    EXPECT_TRUE(next) << pencil;
    return next ? *next : folio;
}

// The last revision fitted once more.
Folio fitted(Folio folio, const std::string& id, const std::vector<Alteration>& alterations,
             const std::string& reason = {}) {
    folio =
        *pencilBegun(folio, 0, folio.garments[0].revisions.back()->digest(), {id, "2026-03-14"});
    folio.garments[0].pencils.back().alterations = alterations;
    return confirmed(folio, id, reason);
}

// Three fittings, a new girth and another style in between: readings of one seam in two revisions
// that follow each other, one side alone, a length, a line.
Folio commission(const MeasurementSet& body) {
    Folio folio = confirmed(blockFolio(body), "block");
    folio = fitted(folio, "a", {takenIn("a1", "2-3", 8), takenIn("a2", "3-4", -5)});
    Alteration left = takenIn("b1", "2-3", 3);
    left.side = BodySide::left;
    folio = fitted(
        folio, "b",
        {left, {.id = "b2", .change = ChangeLength{.at = {.level = "under_bust"}, .amountMm = 9}}});
    Style looser;
    looser.easeMm[LevelId::waist] = -40;
    return fitted(folio, "c",
                  {{.id = "c1", .change = ChangeStyle{looser}}, takenIn("c2", "4-5", 4)});
}

// A first revision whose recipe and outlines are given.
Folio inked(const MeasurementSet& body, std::vector<Alteration> recipe,
            const std::vector<Alteration>& drawn, const std::string& errorsAccepted = {}) {
    Folio folio = blockFolio(body);
    folio.garments[0].pencils[0].alterations = drawn;
    RevisionContent content{.garment = "g1",
                            .number = 1,
                            .confirmedOn = "2026-03-10",
                            .confirmedBy = {},
                            .note = {},
                            .parent = {},
                            .recipe = {folio.measurementSets[0], Style{}, std::move(recipe)},
                            .pattern = *pencilOutcome(folio, folio.garments[0].pencils[0]).pattern,
                            .errorsAccepted = errorsAccepted};
    folio.garments[0].revisions.emplace_back(inkOver(std::move(content), "recipe"));
    return folio;
}

TEST(Drift, unchangedRulesGiveTheInkToTheLastBit) {
    const auto& bodies = bodies::ansurBodies();
    for (std::size_t i = 3; i < bodies.size(); i += 97) {
        SCOPED_TRACE(i);
        const Folio folio = commission(bodies[i]);
        for (const Shared<Revision>& revision : folio.garments[0].revisions) {
            SCOPED_TRACE(revision->number());
            const auto replay = replayOf(folio, *revision);
            ASSERT_TRUE(replay);
            EXPECT_EQ(*replay, revision->pattern());
        }
        EXPECT_TRUE(driftIn(folio, folio.garments[0]).empty());
    }
}

TEST(Drift, otherAmountsAreToldWithDistancePanelAndPlace) {
    const MeasurementSet body = bodies::ansurBodies().at(17);
    // Half a millimetre more at each of the two edges, by hand.
    const Folio folio = inked(body, {takenIn("a", "2-3", 8)}, {takenIn("a", "2-3", 9)});
    const std::string digest = folio.garments[0].revisions[0]->digest();
    const auto notes = driftIn(folio, folio.garments[0]);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(notes[0].code, ProblemCode::rulesChanged);
    EXPECT_EQ(notes[0].severity, Severity::note);
    EXPECT_EQ(notes[0].subject, "1");
    EXPECT_TRUE(notes[0].panel == "2" || notes[0].panel == "3") << notes[0].panel;
    ASSERT_EQ(notes[0].figures.size(), 1U);
    EXPECT_NEAR(notes[0].figures[0].value, 0.5, 0.02);
    ASSERT_TRUE(notes[0].at);
    EXPECT_NEAR(notes[0].at->y(), 35, 5) << "where it was taken in";
    EXPECT_EQ(folio.garments[0].revisions[0]->digest(), digest);
}

TEST(Drift, aHundredthOfAMillimetreIsTheLimit) {
    const MeasurementSet body = bodies::ansurBodies().at(17);
    const auto notesFor = [&](double moreMm) {
        const Folio folio =
            inked(body, {takenIn("a", "2-3", 8)}, {takenIn("a", "2-3", 8 + 2 * moreMm)});
        return driftIn(folio, folio.garments[0]).size();
    };
    EXPECT_EQ(notesFor(0.5 * tolerance::kCompareSearchMm), 0U);
    EXPECT_EQ(notesFor(2 * tolerance::kCompareSearchMm), 1U);
}

TEST(Drift, anAlterationThatNoLongerFitsIsNamed) {
    const MeasurementSet body = bodies::ansurBodies().at(17);
    const Alteration lost = takenIn("b", "8-9", 4);
    Folio folio = inked(body, {takenIn("a", "2-3", 8), lost}, {takenIn("a", "2-3", 9)});
    const auto notes = driftIn(folio, folio.garments[0]);
    ASSERT_EQ(notes.size(), 2U);
    EXPECT_EQ(notes[1].code, ProblemCode::rulesChanged);
    EXPECT_EQ(notes[1].severity, Severity::note);
    EXPECT_EQ(notes[1].subject, "shape_seam");
    EXPECT_EQ(notes[1].detail, "8-9");
    EXPECT_EQ(notes[1].figures.at(0).name, "revision");
    EXPECT_EQ(notes[1].figures.at(0).value, 1);
    // One that never fitted, and was accepted so, is no news.
    folio = inked(body, {takenIn("a", "2-3", 8), lost}, {takenIn("a", "2-3", 9)},
                  "she knows why\nalteration_unfit shape_seam");
    EXPECT_EQ(driftIn(folio, folio.garments[0]).size(), 1U);
}

TEST(Drift, whatWasLeftOutAtConfirmingIsSilent) {
    const MeasurementSet body = bodies::ansurBodies().at(17);
    const Folio folio = fitted(confirmed(blockFolio(body), "block"), "a",
                               {takenIn("a", "2-3", 8), takenIn("b", "8-9", 4)}, "she knows why");
    ASSERT_FALSE(folio.garments[0].revisions[1]->content().errorsAccepted.empty());
    EXPECT_TRUE(driftIn(folio, folio.garments[0]).empty());
}

TEST(Drift, otherPanelsHaveNoDistance) {
    const MeasurementSet body = bodies::ansurBodies().at(17);
    const Alteration joined{.id = "j", .change = JoinPanels{"3-4"}};
    for (const auto& folio : {inked(body, {joined}, {}), inked(body, {}, {joined})}) {
        const auto notes = driftIn(folio, folio.garments[0]);
        ASSERT_EQ(notes.size(), 1U);
        EXPECT_FALSE(notes[0].panel.empty());
        EXPECT_TRUE(notes[0].figures.empty());
    }
}

TEST(Drift, aBlockThatCanNoLongerBeDraftedIsSaid) {
    const Folio whole = inked(bodies::ansurBodies().at(17), {}, {});
    RevisionContent content = whole.garments[0].revisions[0]->content();
    content.recipe.measurements.valuesMm.erase(Measurement::waistGirth);
    Folio folio = whole;
    folio.garments[0].revisions = {inkOver(std::move(content), "recipe")};
    EXPECT_FALSE(replayOf(folio, *folio.garments[0].revisions[0]));
    const auto notes = driftIn(folio, folio.garments[0]);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_TRUE(notes[0].panel.empty());
    EXPECT_TRUE(notes[0].figures.empty());
}

}  // namespace
}  // namespace coutil
