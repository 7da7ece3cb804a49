#include "core/comparison/alterations_between.h"

#include <gtest/gtest.h>

#include "core/revision/ink.h"
#include "tests/core/pattern/two_panels.h"

namespace coutil {
namespace {

Alteration named(const std::string& id) {
    return {.id = id, .change = ShapeSeam{.seam = "1-2", .amounts = {}}, .why = "why " + id};
}

Revision inked(int number, const std::string& parent, const std::vector<std::string>& ids) {
    RevisionContent content;
    content.garment = "g";
    content.number = number;
    content.parent = parent;
    content.confirmedOn = "2026-03-0" + std::to_string(number);
    for (const std::string& id : ids) content.recipe.alterations.push_back(named(id));
    content.pattern = samples::twoPanels();
    return inkOver(std::move(content), "recipe");
}

// 1 - 2 - 3, and 4 branches from 1; a pencil on 3 with one change on and one off.
struct Branched {
    Folio folio;
    std::vector<std::string> digests;

    Branched() {
        Garment garment;
        garment.id = "g";
        garment.name = "Bodice";
        const auto add = [&](int number, const std::string& parent,
                             const std::vector<std::string>& ids) {
            const Revision revision = inked(number, parent, ids);
            digests.push_back(revision.digest());
            garment.revisions.emplace_back(revision);
        };
        add(1, "", {"p"});
        add(2, digests[0], {"p", "q"});
        add(3, digests[1], {"p", "q", "r", "s"});
        add(4, digests[0], {"p", "t"});
        Pencil pencil;
        pencil.id = "pencil";
        pencil.parent = digests[2];
        pencil.alterations = {named("u"), named("v")};
        pencil.alterations[1].isOn = false;
        garment.pencils.push_back(pencil);
        folio.garments.push_back(garment);
    }
};

std::vector<std::string> idsOf(const std::vector<DatedAlteration>& alterations) {
    std::vector<std::string> ids;
    for (const auto& each : alterations) ids.push_back(each.alteration.id);
    return ids;
}

using Ids = std::vector<std::string>;

TEST(AlterationsBetween, downOneLineOnlyWhatCameSince) {
    const Branched branched;
    const auto between =
        alterationsBetween(branched.folio, {branched.digests[0]}, {branched.digests[2]});
    EXPECT_EQ(between.commonAncestor, branched.digests[0]);
    EXPECT_TRUE(between.onlyInA.empty());
    EXPECT_EQ(idsOf(between.onlyInB), (Ids{"q", "r", "s"}));
    EXPECT_EQ(between.onlyInB[0].revision, 2);
    EXPECT_EQ(between.onlyInB[0].confirmedOn, "2026-03-02");
    EXPECT_EQ(between.onlyInB[0].garment, "Bodice");
    EXPECT_EQ(between.onlyInB[2].revision, 3);
    EXPECT_TRUE(between.isSameBlock);
}

TEST(AlterationsBetween, acrossABranchBothSides) {
    const Branched branched;
    const auto between =
        alterationsBetween(branched.folio, {branched.digests[2]}, {branched.digests[3]});
    EXPECT_EQ(between.commonAncestor, branched.digests[0]);
    EXPECT_EQ(idsOf(between.onlyInA), (Ids{"q", "r", "s"}));
    EXPECT_EQ(idsOf(between.onlyInB), (Ids{"t"}));
}

TEST(AlterationsBetween, aPencilBringsWhatIsSwitchedOn) {
    const Branched branched;
    const auto between =
        alterationsBetween(branched.folio, {branched.digests[1]}, {.pencil = "pencil"});
    EXPECT_EQ(idsOf(between.onlyInB), (Ids{"r", "s", "u"}));
    EXPECT_EQ(between.onlyInB[2].revision, 0);
    EXPECT_TRUE(between.onlyInB[2].confirmedOn.empty());
}

TEST(AlterationsBetween, nothingBetweenAStateAndItself) {
    const Branched branched;
    const StateRef third{branched.digests[2]};
    const auto between = alterationsBetween(branched.folio, third, third);
    EXPECT_TRUE(between.onlyInA.empty() && between.onlyInB.empty());
    EXPECT_EQ(between.commonAncestor, branched.digests[2]);
}

}  // namespace
}  // namespace coutil
