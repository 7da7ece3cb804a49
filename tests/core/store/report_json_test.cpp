// What `info --json` says of a history.
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/store/report_formats.h"
#include "tests/core/store/sample_folio.h"

namespace {

using namespace coutil;
using Json = nlohmann::json;

TEST(FolioInfo, theTimelineNamesRevisionsFittingsAndPencils) {
    const Folio folio = test::sampleFolio();
    const Json timeline = Json::parse(writeFolioInfoJson(folio))["garments"][0]["timeline"];
    ASSERT_EQ(timeline.size(), 7U);
    EXPECT_EQ(timeline[0]["kind"], "revision");
    EXPECT_EQ(timeline[0]["id"], 1);
    EXPECT_EQ(timeline[0]["state"], "confirmed");
    EXPECT_EQ(timeline[0]["date"], "2026-04-11");
    EXPECT_EQ(timeline[0]["by"], "wardrobe");
    EXPECT_EQ(timeline[0]["parent"], nullptr);
    EXPECT_EQ(timeline[0]["digest"], folio.garments[0].revisions[0]->digest());
    EXPECT_EQ(timeline[1]["kind"], "fitting");
    EXPECT_EQ(timeline[1]["how"], "posted");
    EXPECT_EQ(timeline[1]["revision"], 1);
    EXPECT_EQ(timeline[1]["marks"], 9);
    EXPECT_EQ(timeline[1]["photos"], 2);
    EXPECT_EQ(timeline[2]["parent"], 1);
    EXPECT_EQ(timeline[2]["alterations"], 14);
    EXPECT_EQ(timeline[5]["id"], "pencil");
    EXPECT_EQ(timeline[6]["name"], "with a gusset");
    EXPECT_EQ(timeline[6]["parent"], 2);
}

TEST(FolioInfo, aParentInAnotherGarmentIsNamedWithIt) {
    const Json info = Json::parse(writeFolioInfoJson(test::sampleFolio()));
    const Json first = info["garments"][1]["timeline"][0];
    EXPECT_EQ(first["parent"], 2);
    EXPECT_EQ(first["parent_garment"], "act one");
}

}  // namespace
