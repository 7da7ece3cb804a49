// Choices of making-up and tracing as JSON: every value comes back to the last bit, and every fault
// is named with the path of its key.
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/store/making_up_formats.h"

namespace coutil {
namespace {

Outcome<MakingUpChoices> readWith(const std::string& rest) {
    return readMakingUpJson(R"({"coutil":"making_up","version":1,)" + rest + "}");
}

TEST(MakingUpJson, nothingSaidIsAsUsual) {
    const auto read = readMakingUpJson(R"({"coutil":"making_up","version":1})");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, MakingUpChoices{});
    const auto tracing = readTracingChoicesJson(R"({"coutil":"tracing_choices","version":1})");
    ASSERT_TRUE(tracing);
    EXPECT_EQ(*tracing, TracingChoices{});
}

TEST(MakingUpJson, whatIsLeftOutKeepsItsDefaultAndListsReplace) {
    const auto read = readWith(
        R"("channels":{"seam_bone":{"width":"1/4 in"},"by_hand":[{"channel":"seam 2-3","on":false}]},
           "layers":[{"key":"strength"}])");
    ASSERT_TRUE(read);
    EXPECT_DOUBLE_EQ(read->channels.seamBone.widthMm, 6.35);
    EXPECT_EQ(read->channels.seamBone.kind, MakingUpChoices{}.channels.seamBone.kind);
    ASSERT_EQ(read->channels.byHand.size(), 1U);
    EXPECT_EQ(read->channels.byHand[0].isOn, false);
    EXPECT_FALSE(read->channels.byHand[0].bone);
    ASSERT_EQ(read->layers.size(), 1U);
    EXPECT_EQ(read->layers[0].clothWidthMm, 1500);
    EXPECT_EQ(read->eyelets, EyeletChoices{});
}

// Any choices at all, different for every seed.
class ChoiceMaker {
  public:
    explicit ChoiceMaker(unsigned seed) : random_(seed) {}

    MakingUpChoices choices() {
        MakingUpChoices c;
        c.channels = {mm(),   {mm(), mm(), mm()},
                      coin(), coin(),
                      coin(), coin(),
                      coin(), bone(),
                      bone(), bone(),
                      bone(), bone()};
        for (int i = 0; i < 3; ++i) c.channels.byHand.push_back(byHand());
        c.bones.stepMm = mm();
        c.bones.syntheticRadiusMm = mm();
        c.bones.stock = {{bone(), {mm(), mm()}, mm()}};
        c.eyelets = {mm(), mm(), mm(), mm(), mm(), mm(), mm(), mm(), mm()};
        c.busk = {{mm()}, mm(), mm(), mm(), mm()};
        c.waistTape = {coin(), mm(), mm()};
        c.binding = {mm(), mm()};
        c.layers.resize(2);
        c.layers[1] = {"Oberstoff \"rot\"",  coin(), {"1", "5"}, mm(), coin(),
                       {{"5", "top", mm()}}, mm()};
        c.materials = {mm() / 100, "crowns", {{"lace", mm()}, {"cloth/strength", mm()}}};
        return c;
    }
    TracingChoices tracing() {
        TracingChoices c;
        c.layer = coin() ? "outer" : "";
        c.notchShape = NotchShape(number(3));
        c.lines = LinesShown(number(3));
        c.byHand = {{"2", PanelSide(number(3)), mm(), Point(mm(), -mm()), mm(), mm()}, {"3"}};
        return c;
    }

  private:
    double mm() { return std::uniform_real_distribution<double>(0.01, 300)(random_); }
    bool coin() { return number(2) == 0; }
    int number(int below) { return std::uniform_int_distribution<int>(0, below - 1)(random_); }
    BoneType bone() { return {BoneKind(number(3)), mm()}; }
    ChannelChoice byHand() {
        ChannelChoice c{.channel = "panel 3 middle", .side = PanelSide(number(3))};
        if (coin()) c.isOn = coin();
        if (coin()) c.bone = bone();
        if (coin()) c.carrier = ChannelCarrier(number(2));
        if (coin()) c.bottomMm = -mm();
        if (coin()) c.topMm = mm();
        if (coin()) c.line = ChannelLine{"3", mm(), mm()};
        return c;
    }

    std::mt19937 random_;
};

TEST(MakingUpJson, everyValueComesBackToTheLastBit) {
    for (unsigned seed = 0; seed < 300; ++seed) {
        const MakingUpChoices choices = ChoiceMaker(seed).choices();
        const auto read = readMakingUpJson(writeMakingUpJson(choices));
        ASSERT_TRUE(read) << seed;
        EXPECT_EQ(*read, choices) << seed;
        const TracingChoices tracing = ChoiceMaker(seed).tracing();
        const auto again = readTracingChoicesJson(writeTracingChoicesJson(tracing));
        ASSERT_TRUE(again) << seed;
        EXPECT_EQ(*again, tracing) << seed;
    }
}

void expectFault(const std::string& rest, ProblemCode code, const std::string& path,
                 const std::string& detail = {}) {
    SCOPED_TRACE(rest);
    const auto read = readWith(rest);
    ASSERT_FALSE(read);
    ASSERT_EQ(read.problems.size(), 1U);
    EXPECT_EQ(read.problems[0].code, code);
    EXPECT_EQ(read.problems[0].subject, path);
    if (!detail.empty()) {
        EXPECT_EQ(read.problems[0].detail, detail);
    }
}

TEST(MakingUpJson, everyFaultIsNamedWithItsPath) {
    expectFault(R"("chanels":{})", ProblemCode::jsonUnknownKey, "chanels", "channels");
    expectFault(R"("eyelets":{"pich":20})", ProblemCode::jsonUnknownKey, "eyelets.pich", "pitch");
    expectFault(R"("eyelets":{"pitch":"wide"})", ProblemCode::lengthUnreadable, "eyelets.pitch");
    expectFault(R"("eyelets":{"pitch":1e9})", ProblemCode::lengthOutOfRange, "eyelets.pitch");
    expectFault(R"("eyelets":[])", ProblemCode::jsonWantsObject, "eyelets");
    expectFault(R"("channels":{"seams":1})", ProblemCode::jsonWantsTruth, "channels.seams");
    expectFault(R"("channels":{"seam_bone":{"kind":"steel"}})", ProblemCode::jsonWantsChoice,
                "channels.seam_bone.kind");
    expectFault(R"("channels":{"by_hand":[{"channel":"a"},{"channel":"b","sid":"left"}]})",
                ProblemCode::jsonUnknownKey, "channels.by_hand[1].sid", "side");
    expectFault(R"("layers":[{"key":5}])", ProblemCode::jsonWantsText, "layers[0].key");
    expectFault(R"("busk":{"lengths":"all"})", ProblemCode::jsonWantsNumberList, "busk.lengths");
    const auto point = readTracingChoicesJson(
        R"({"coutil":"tracing_choices","version":1,"by_hand":[{"panel":"1","label_at":[1]}]})");
    ASSERT_FALSE(point);
    EXPECT_EQ(point.problems[0].code, ProblemCode::jsonWantsNumberList);
    EXPECT_EQ(point.problems[0].subject, "by_hand[0].label_at");
    const auto kind = readMakingUpJson(R"({"coutil":"style","version":1})");
    ASSERT_FALSE(kind);
    EXPECT_EQ(kind.problems[0].code, ProblemCode::jsonWrongKind);
}

}  // namespace
}  // namespace coutil
