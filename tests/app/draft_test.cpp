// `coutil draft`, run as a maker or a script runs it.
#include <sys/stat.h>

#include "core/store/folio_file.h"
#include "tests/app/demo_folio.h"

namespace {

using namespace coutil;
using namespace coutil::test;

class Draft : public WithDemoFolio {};

TEST_F(Draft, makesAFolioWithAPencil) {
    const Outcome<Folio> read = readFolio(folio());
    ASSERT_TRUE(read);
    EXPECT_EQ(read->client, "leonore");
    ASSERT_EQ(read->measurementSets.size(), 1U);
    EXPECT_EQ(read->measurementSets[0].takenOn, "2026-03-02");
    EXPECT_DOUBLE_EQ(read->measurementSets[0].valuesMm.at(Measurement::bustGirth), 970);
    ASSERT_EQ(read->garments.size(), 1U);
    EXPECT_EQ(read->garments[0].name, "Corset");
    EXPECT_EQ(read->garments[0].createdOn, "2026-03-03");
    EXPECT_EQ(read->garments[0].pencils.front().style.panelsPerHalf, 6);
    EXPECT_EQ(read->garments[0].pencils.front().measurementSet, read->measurementSets[0].id);
    EXPECT_EQ(folder_.entryCount(), 1U);
}

TEST_F(Draft, theDemoGivesNoWarning) {
    const ProgramRun run = drafted((folder_ / "again.coutil").string());
    EXPECT_EQ(run.err, "");
    EXPECT_EQ(run.out, "");
}

TEST_F(Draft, addsAGarmentToAnExistingFolio) {
    ASSERT_EQ(drafted(folio(), {"--garment", "Act two", "--set", "panels_per_half=5"}).exitCode, 0);
    const Outcome<Folio> read = readFolio(folio());
    ASSERT_TRUE(read);
    ASSERT_EQ(read->garments.size(), 2U);
    EXPECT_EQ(read->garments[1].name, "Act two");
    EXPECT_EQ(read->measurementSets.size(), 1U) << "the same readings were entered twice";
    ASSERT_EQ(drafted(folio(), {"--set", "waist_girth=77"}).exitCode, 0);
    const Outcome<Folio> more = readFolio(folio());
    EXPECT_EQ(more->garments[2].name, "Corset 2");
    EXPECT_EQ(more->measurementSets.size(), 2U);
    EXPECT_EQ(more->client, "leonore");
    const FileState before = stateOf(folio());
    const ProgramRun taken = drafted(folio(), {"--garment", "Act two"});
    EXPECT_EQ(taken.exitCode, 2);
    EXPECT_EQ(taken.messages().size(), 1U) << taken.err;
    EXPECT_EQ(stateOf(folio()), before);
}

TEST_F(Draft, settingsGoOverTheFiles) {
    const std::string file = (folder_ / "set.coutil").string();
    const ProgramRun run =
        drafted(file, {"--set", "waist_girth=30 1/4 in", "--set", "ease.waist=-40", "--set",
                       "top_edge.shape=straight", "--set", "lacing_gap_at.waist=60",
                       "--set=front=fold", "--set", "allowance=12", "--set",
                       "top_edge.at_seam.2-3=185.5", "--client", "Soubrette"});
    ASSERT_EQ(run.exitCode, 0) << run.err;
    const Outcome<Folio> read = readFolio(file);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->client, "Soubrette");
    const MeasurementSet& set = read->measurementSets[0];
    EXPECT_DOUBLE_EQ(set.valuesMm.at(Measurement::waistGirth), 30.25 * 25.4);
    EXPECT_EQ(set.asWritten.at(Measurement::waistGirth), "30 1/4 in");
    const Style& style = read->garments[0].pencils.front().style;
    EXPECT_EQ(style.easeMm.at(LevelId::waist), -40);
    EXPECT_EQ(style.easeMm.at(LevelId::underBust), -10) << "another entry was wiped out";
    EXPECT_EQ(style.topEdge.shape, TopShape::straight);
    EXPECT_EQ(style.topEdge.atSeamMm.at("2-3"), 185.5);
    EXPECT_EQ(style.lacingGapAtMm.at(LevelId::waist), 60);
    EXPECT_EQ(style.front, FrontClosure::fold);
    EXPECT_EQ(style.allowance.seamMm, 12);
}

TEST_F(Draft, withADateTheRunCanBeRepeated) {
    const std::string first = bytesIn(folio());
    ASSERT_EQ(drafted((folder_ / "other.coutil").string(), {"--client", "leonore"}).exitCode, 0);
    EXPECT_EQ(bytesIn(folder_ / "other.coutil"), first);
}

TEST_F(Draft, styleFileMayBeLeftOut) {
    const std::string file = (folder_ / "plain.coutil").string();
    const ProgramRun run =
        runProgram({"draft", "--measurements", demoFile("measurements.json"), "-o", file});
    ASSERT_EQ(run.exitCode, 0) << run.err;
    EXPECT_EQ(readFolio(file)->garments[0].pencils.front().style, Style{});
    EXPECT_EQ(stateOf(file).mode & 0777U, 0600U) << "a body's measurements are private";
}

}  // namespace
