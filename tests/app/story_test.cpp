// One commission from end to end on the command line: the demo singer's corset, drafted, fitted
// three times, confirmed three times, branched, compared, drafted again from new measurements. What
// was asked for is measured on the printed patterns with the test's own arithmetic
// (taped_pattern.h).
#include <fstream>

#include <gmock/gmock.h>

#include "tests/app/demo_folio.h"
#include "tests/app/taped_pattern.h"

namespace {

using namespace coutil::test;
using nlohmann::json;
using testing::HasSubstr;

constexpr double kTapeMm = 0.1;  // the issue's promise for readings

constexpr char kFirstMarks[] = R"({"coutil":"marks","version":1,
 "fitting":{"date":"2026-03-14","revision":1,"how":"posted","by":"client"},"marks":[
 {"kind":"pinned","seam":"2-3","position":35,"amount":8,"side":"both"},
 {"kind":"opened","seam":"3-4","position":-50,"amount":6,"side":"both","note":"tight when seated"},
 {"kind":"opened","seam":"5-6","position":-60,"amount":4,"side":"left"}]})";

constexpr char kSecondMarks[] = R"({"coutil":"marks","version":1,
 "fitting":{"date":"2026-04-02","revision":2,"how":"in_person","by":"wardrobe"},"marks":[
 {"kind":"opened","panel":"4","from":"bottom","along":30,"length":60,"amount":8,"side":"right"},
 {"kind":"pinned","seam":"4-5","position":20,"amount":5,"side":"right"},
 {"kind":"longer","level":"under_bust","amount":10}]})";

constexpr char kThirdMarks[] = R"({"coutil":"marks","version":1,
 "fitting":{"date":"2026-04-20","revision":3,"how":"in_person","by":"wardrobe"},"marks":[
 {"kind":"bust_point_lower","amount":6},
 {"kind":"pinned","seam":"2-3","position":-30,"amount":3,"side":"left"}]})";

class Story : public WithDemoFolio {
  protected:
    std::string ran(std::vector<std::string> words) {
        words.insert(words.begin() + 1, folio());
        const ProgramRun run = runProgram(words);
        EXPECT_EQ(run.exitCode, 0) << words[0] << ": " << run.err;
        return run.out;
    }
    json pattern(const std::string& revision) {
        return json::parse(ran({"pattern", "--json", "--revision", revision}));
    }
    std::string file(const std::string& name, const std::string& text) {
        const std::string path = (folder_ / name).string();
        std::ofstream(path) << text;
        return path;
    }
    std::string confirmed(const std::string& date) {
        return ran({"confirm", "--date", date, "--by", "wardrobe"});
    }
    void fitted(const std::string& name, const std::string& marks, const std::string& date) {
        ran({"fit", "--marks", file(name, marks), "--date", date});
    }
    void tellAll() {
        EXPECT_EQ(confirmed("2026-03-05"), "1\n");
        fitted("first.json", kFirstMarks, "2026-03-15");
        EXPECT_EQ(confirmed("2026-03-18"), "2\n");
        fitted("second.json", kSecondMarks, "2026-04-03");
        EXPECT_EQ(confirmed("2026-04-05"), "3\n");
        fitted("third.json", kThirdMarks, "2026-04-21");
        EXPECT_EQ(confirmed("2026-04-22"), "4\n");
    }
};

TEST_F(Story, pinsAndSlitsComeBackAsWhatTheTapeSaid) {
    tellAll();
    const json block = pattern("1");
    const json second = pattern("2");
    for (const std::string side : {"left", "right"}) {
        EXPECT_NEAR(takenInMm(block, second, "2-3", 35, "both", side), 8, kTapeMm) << side;
        EXPECT_NEAR(takenInMm(block, second, "3-4", -50, "both", side), -6, kTapeMm) << side;
    }
    EXPECT_NEAR(takenInMm(block, second, "5-6", -60, "both", "left"), -4, kTapeMm);
    EXPECT_NEAR(takenInMm(block, second, "5-6", -60, "both", "right"), 0, 1e-3);
    const json third = pattern("3");
    EXPECT_NEAR(takenInMm(second, third, "4-5", 20, "right", "right"), 5, kTapeMm);
    EXPECT_NEAR(takenInMm(second, third, "4-5", 20, "left", "left"), 0, 0.01);
    const json fourth = pattern("4");
    EXPECT_NEAR(takenInMm(third, fourth, "2-3", -30, "left", "left"), 3, kTapeMm);
    EXPECT_NEAR(takenInMm(third, fourth, "2-3", -30, "right", "right"), 0, 0.01);
}

TEST_F(Story, lengtheningAndTheBustPointMoveAsAsked) {
    tellAll();
    const json second = pattern("2");
    const json third = pattern("3");
    const json fourth = pattern("4");
    for (const std::string seam : {"1-2", "2-3", "3-4", "4-5", "5-6"}) {
        const std::string front = seam.substr(0, 1);
        const TapedEdge before(second, front, "left", "seam " + seam);
        const TapedEdge after(third, front, "left", "seam " + seam);
        EXPECT_NEAR(after.aboveWaistMm() - before.aboveWaistMm(), 10, kTapeMm) << seam;
        EXPECT_NEAR(after.belowWaistMm() - before.belowWaistMm(), 0, kTapeMm) << seam;
    }
    const auto heightOf = [](const json& pattern, const std::string& level) {
        return named(pattern["levels"], level)["height"].get<double>();
    };
    EXPECT_NEAR(heightOf(third, "bust") - heightOf(second, "bust"), 10, kTapeMm);
    EXPECT_NEAR(heightOf(fourth, "bust") - heightOf(third, "bust"), -6, kTapeMm);
}

// Every promise of the block holds for what was fitted: both edges of every seam equally long.
TEST_F(Story, seamsStayEqualThroughEveryRevision) {
    tellAll();
    for (const std::string revision : {"1", "2", "3", "4"}) {
        for (const json& seam : pattern(revision)["seams"]) {
            const auto above = seam["above_waist"].get<std::vector<double>>();
            const auto below = seam["below_waist"].get<std::vector<double>>();
            EXPECT_NEAR(above[0], above[1], 0.01) << revision << " " << seam["name"];
            EXPECT_NEAR(below[0], below[1], 0.01) << revision << " " << seam["name"];
        }
    }
}

TEST_F(Story, whatIsConfirmedNeverChangesAndAPencilBranchesFromAnyRevision) {
    tellAll();
    const json before = pattern("1");
    ran({"alter", "--revision", "1", "--date", "2026-05-01", "--alterations",
         file("branch.json", R"({"coutil":"alterations","version":1,"alterations":[
            {"kind":"shape_seam","seam":"1-2","amounts":[[100,-5]]}]})")});
    EXPECT_EQ(pattern("1"), before);
    const json pencil = pattern("pencil");
    EXPECT_EQ(pencil["revision"]["parent"], 1);
    EXPECT_NEAR(takenInMm(before, pencil, "1-2", 100, "both", "both"), -5, kTapeMm);
    EXPECT_EQ(confirmed("2026-05-02"), "5\n");
    const json info = json::parse(ran({"info", "--json"}));
    const json& timeline = info["garments"][0]["timeline"];
    EXPECT_EQ(timeline.size(), 8U);  // five revisions, three fittings
    EXPECT_EQ(timeline.back()["parent"], 1);
}

TEST_F(Story, comparingTellsWhatWasAlteredBetween) {
    tellAll();
    const json comparison = json::parse(ran({"compare", "1", "3", "--json"}));
    EXPECT_EQ(comparison["coutil"], "comparison");
    const std::string all = comparison.dump();
    EXPECT_THAT(all, HasSubstr("shape_seam"));
    EXPECT_THAT(all, HasSubstr("change_length"));
    EXPECT_THAT(ran({"compare", "1", "3", "--svg"}), HasSubstr("<svg"));
}

TEST_F(Story, aComparisonIsWrittenAsPdf) {
    tellAll();
    const std::string pdf = (folder_ / "compared.pdf").string();
    const std::vector<std::string> call{"compare", "1",          "3",  "--pdf",
                                        "--date",  "2026-05-01", "-o", pdf};
    EXPECT_EQ(ran(call), "");
    const std::string bytes = stateOf(pdf).bytes;
    EXPECT_EQ(bytes.substr(0, 5), "%PDF-");
    EXPECT_EQ(ran(call), "");
    EXPECT_EQ(stateOf(pdf).bytes, bytes) << "a repeated run gave other bytes";
    const auto before = stateOf(folio());
    const ProgramRun nowhere = runProgram({"compare", folio(), "1", "3", "--pdf"});
    EXPECT_EQ(nowhere.exitCode, 2);
    EXPECT_THAT(nowhere.err, HasSubstr("-o OUT.pdf"));
    const ProgramRun over = runProgram({"compare", folio(), "1", "3", "--pdf", "-o", folio()});
    EXPECT_NE(over.exitCode, 0);
    EXPECT_EQ(stateOf(folio()), before) << "a folio was written over";
}

TEST_F(Story, newMeasurementsAreDraftedAndEveryAlterationAppliedAgain) {
    tellAll();
    json measurements = json::parse(std::ifstream(demoFile("measurements.json")));
    measurements["taken_on"] = "2026-06-01";
    measurements["values"]["waist_girth"] = 78;
    ran({"alter", "--date", "2026-06-02", "--measurements",
         file("june.json", measurements.dump())});
    const json last = pattern("4");
    const json again = pattern("pencil");
    const auto waist = [](const json& pattern) { return named(pattern["levels"], "waist"); };
    EXPECT_NEAR(waist(again)["target"].get<double>() - waist(last)["target"].get<double>(), 20,
                0.01);
    // What the fittings took at the waist they take again.
    const auto offTarget = [&](const json& pattern) {
        return waist(pattern)["pattern"].get<double>() - waist(pattern)["target"].get<double>();
    };
    EXPECT_NEAR(offTarget(again), offTarget(last), 0.3);
    EXPECT_EQ(again["problems"].dump().find("alteration_"), std::string::npos);
}

TEST_F(Story, theSameCallsGiveTheSameFileToTheByte) {
    tellAll();
    const auto first = stateOf(folio());
    std::filesystem::remove(folio());
    ASSERT_EQ(drafted(folio()).exitCode, 0);
    tellAll();
    EXPECT_EQ(stateOf(folio()).bytes, first.bytes);
}

TEST_F(Story, whatDoesNotFitIsToldAndChangesNothing) {
    EXPECT_EQ(confirmed("2026-03-05"), "1\n");
    const auto before = stateOf(folio());
    const std::string marks = file("wrong.json", R"({"coutil":"marks","version":1,
        "fitting":{"date":"2026-03-14","revision":1,"how":"posted","by":"client"},
        "marks":[{"kind":"pinned","seam":"8-9","position":35,"amount":8}]})");
    const ProgramRun run = runProgram({"fit", folio(), "--marks", marks, "--date", "2026-03-15"});
    EXPECT_EQ(run.exitCode, 2);
    EXPECT_THAT(run.err, HasSubstr("8-9"));
    const ProgramRun again = runProgram({"confirm", folio()});
    EXPECT_EQ(again.exitCode, 2);
    EXPECT_THAT(again.err, HasSubstr("no pencil"));
    const ProgramRun unknown = runProgram({"compare", folio(), "1", "7", "--json"});
    EXPECT_EQ(unknown.exitCode, 2);
    EXPECT_THAT(unknown.err, HasSubstr("7"));
    EXPECT_EQ(stateOf(folio()), before);
}

}  // namespace
