// Bad input: a clear line for every fault, exit 2 or 3, nothing written and nothing changed.
#include <filesystem>

#include <gmock/gmock.h>
#include <sys/stat.h>

#include "tests/app/demo_folio.h"

namespace {

using namespace coutil::test;
using testing::HasSubstr;
namespace fs = std::filesystem;

class BadInput : public WithDemoFolio {
  protected:
    // One refused run: the exit code, one line that holds every one of `words`, no result, and
    // neither the folio nor its folder changed.
    void expectRefused(const std::vector<std::string>& call, int exitCode,
                       const std::vector<std::string>& words,
                       const RunCircumstances& circumstances = {}) {
        const FileState before = stateOf(folio());
        const std::size_t count = folder_.entryCount();
        const ProgramRun run = runProgram(call, circumstances);
        std::string said;
        for (const std::string& word : call) said += word + " ";
        SCOPED_TRACE(said + "\n" + run.err);
        EXPECT_EQ(run.exitCode, exitCode);
        EXPECT_EQ(run.messages().size(), 1U);
        EXPECT_EQ(run.err.substr(0, 8), "coutil: ");
        EXPECT_EQ(run.err.find('{'), std::string::npos) << "an unfilled pattern";
        for (const std::string& word : words) EXPECT_THAT(run.err, HasSubstr(word));
        EXPECT_EQ(run.out, "");
        EXPECT_EQ(stateOf(folio()), before);
        EXPECT_EQ(folder_.entryCount(), count);
    }
    void expectSetRefused(const std::string& setting, const std::vector<std::string>& words) {
        expectRefused({"draft", "--measurements", demoFile("measurements.json"), "--style",
                       demoFile("style.json"), "--set", setting, "-o", newFile()},
                      2, words);
    }
    // A measurements file with this text; what the program says about it names the file.
    void expectTextRefused(const std::string& text, const std::vector<std::string>& words) {
        putBytes(folder_ / "m.json", text);
        expectRefused({"draft", "--measurements", (folder_ / "m.json").string(), "-o", newFile()},
                      2, words);
        fs::remove(folder_ / "m.json");
    }
    [[nodiscard]] std::string newFile() const { return (folder_ / "new.coutil").string(); }
};

TEST_F(BadInput, measurementsOutOfReason) {
    expectSetRefused("waist_girth=-76", {"aist"});
    expectSetRefused("waist_girth=0", {"aist"});
    expectSetRefused("bust_girth=97 m", {"ust"});
    expectSetRefused("bust_girth=1e300", {"ust"});
    expectSetRefused("waist_girth=seventy-six", {"aist", "seventy-six"});
    expectSetRefused("waist_girth=", {"aist"});
    expectSetRefused("waist_girth=NaN", {"aist", "NaN"});
    expectSetRefused("waist_to_bust=3000 km", {"ust"});
}

TEST_F(BadInput, styleOutOfReason) {
    expectSetRefused("panels_per_half=3", {"3"});
    expectSetRefused("panels_per_half=1000000000", {});
    expectSetRefused("panels_per_half=five", {"five"});
    expectSetRefused("lacing_gap=-50", {});
    expectSetRefused("ease.waist=-900", {});
    expectSetRefused("front=zip", {"zip"});
    expectSetRefused("top_edge.shape=ruffled", {"ruffled"});
    expectSetRefused("allowance=-3", {});
    expectSetRefused("panel_shares=[1,2", {});
}

// What is refused is told in the unit it was written in, not in one the maker never used.
TEST_F(BadInput, figuresAreToldInTheirOwnUnit) {
    const std::string start = R"({"coutil": "measurements", "version": 1, "unit": ")";
    const std::string values = R"(", "values": {"waist_girth": 5, "bust_girth": "970 mm", )"
                               R"("under_bust_girth": "835 mm", "top_hip_girth": "920 mm", )"
                               R"("hip_girth": "1030 mm", "waist_to_bust": "170 mm", )"
                               R"("waist_to_under_bust": "85 mm", "waist_to_hip": "210 mm"}})";
    expectTextRefused(start + "in" + values, {" 5 in", "15 3/4 in"});
    expectTextRefused(start + "mm" + values, {" 5 mm", "400 mm"});
    expectTextRefused(start + "cm" + values, {" 5 cm", "40 cm"});
    expectSetRefused("lacing_gap=-50", {" -50 mm", "300 mm"});
    expectSetRefused("ease.waist=-900", {" -900 mm", "-400 mm"});
}

TEST_F(BadInput, unknownNames) {
    expectSetRefused("wasit_girth=76", {"wasit_girth"});
    expectSetRefused("ease.wiast=-40", {"wiast"});
    expectSetRefused("top_edge.shape.more=1", {"top_edge.shape.more"});
    expectSetRefused("panels_per_half.x=1", {"panels_per_half"});
    expectSetRefused("waist_girth", {"--set", "waist_girth", "NAME=VALUE"});
    expectSetRefused("=76", {"--set", "=76"});
    expectSetRefused(".=76", {});
}

TEST_F(BadInput, brokenText) {
    const std::string head = R"({"coutil":"measurements","version":1,"unit":"cm",)";
    expectTextRefused("", {"m.json", "empty"});
    expectTextRefused(head, {"m.json"});
    expectTextRefused("not JSON at all", {"m.json"});
    expectTextRefused("\xFF\xFE\x00", {"m.json"});
    expectTextRefused(std::string(100'000, '['), {"m.json"});
    expectTextRefused("[]", {"m.json"});
    expectTextRefused(head + R"("values":{"waist_girth":1e308}})", {"waist_girth", "1e+308"});
    expectTextRefused(head + R"("values":{"waist_girth":-10001}})", {"waist_girth", "-10001"});
    expectTextRefused(R"({"coutil":"style","version":1})", {"m.json"});
    expectTextRefused(R"({"coutil":"measurements","version":2,"values":{}})", {"m.json"});
    expectTextRefused(head + R"("values":{"bust_girth":"wide"}})", {"m.json", "wide"});
    expectTextRefused(head + R"("values":{"bust_grith":97}})", {"m.json", "bust_grith"});
    expectTextRefused(head + R"("valeus":{}})", {"m.json", "valeus"});
    expectTextRefused(head + R"("values":{"bust_girth":[97]}})", {"m.json"});
    expectTextRefused(head + R"("values":{"bust_girth":97,"bust_girth":98}})", {"m.json"});
    expectTextRefused(head + R"("taken_on":"02.03.2026","values":{}})", {"m.json", "02.03.2026"});
}

TEST_F(BadInput, missingMeasurementsAreNamedOneByOne) {
    putBytes(folder_ / "m.json",
             R"({"coutil":"measurements","version":1,"unit":"cm","values":{"bust_girth":97}})");
    const ProgramRun run =
        runProgram({"draft", "--measurements", (folder_ / "m.json").string(), "-o", newFile()});
    EXPECT_EQ(run.exitCode, 2);
    EXPECT_GE(run.messages().size(), 2U) << run.err;
    EXPECT_THAT(run.err, HasSubstr("aist"));
    EXPECT_FALSE(fs::exists(newFile()));
}

TEST_F(BadInput, everyFaultIsToldAtOnce) {
    const ProgramRun run =
        runProgram({"draft", "--measurements", demoFile("measurements.json"), "--set", "a=1",
                    "--set", "waist_girth=x", "--style", "none.json", "-o", newFile()});
    EXPECT_EQ(run.exitCode, 3);
    EXPECT_EQ(run.messages().size(), 3U) << run.err;
}

TEST_F(BadInput, filesThatCannotBeRead) {
    const std::string m = demoFile("measurements.json");
    expectRefused({"draft", "--measurements", "none.json", "-o", newFile()}, 3, {"none.json"});
    expectRefused({"draft", "--measurements", folder_.path().string(), "-o", newFile()}, 3, {});
    expectRefused({"info", (folder_ / "none.coutil").string()}, 3, {"none.coutil"});
    expectRefused({"info", folder_.path().string()}, 3, {folder_.path().string()});
    expectRefused({"pattern", m, "--json"}, 3, {"measurements.json"});
    expectRefused({"check", m}, 3, {"measurements.json"});
    expectRefused({"draft", "--measurements", m, "-o", demoFile("style.json")}, 3, {"style.json"});
    fs::permissions(folio(), fs::perms::none);
    fs::permissions(folder_.path(), fs::perms(0755));
    expectRefused({"info", folio()}, 3, {"leonore.coutil"}, {.isOrdinaryUser = true});
}

TEST_F(BadInput, damagedFolio) {
    const std::string whole = bytesIn(folio());
    putBytes(folio(), whole.substr(0, whole.size() / 2));
    for (const char* command : {"info", "check"}) expectRefused({command, folio()}, 3, {"damaged"});
    expectRefused({"pattern", folio(), "--json"}, 3, {"damaged"});
    expectRefused({"sheets", folio(), "--paper", "A4", "-o", newFile()}, 3, {"damaged"});
    expectRefused({"draft", "--measurements", demoFile("measurements.json"), "-o", folio()}, 3,
                  {"damaged"});
    std::string newer = whole;
    newer[63] = 9;
    putBytes(folio(), newer);
    expectRefused({"info", folio()}, 3, {"newer", "9"});
}

TEST_F(BadInput, targetsThatCannotBeWritten) {
    const std::string m = demoFile("measurements.json");
    const std::string gone = (folder_ / "gone/a").string();
    expectRefused({"draft", "--measurements", m, "-o", gone}, 2, {"gone"});
    expectRefused({"pattern", folio(), "--svg", "-o", gone}, 2, {"gone"});
    expectRefused({"sheets", folio(), "--paper", "A4", "--effort", "0", "-o", gone}, 2, {"gone"});
    expectRefused({"pattern", folio(), "--svg", "-o", folder_.path().string()}, 2, {});
    fs::permissions(folio(), fs::perms(0444));
    expectRefused({"draft", "--measurements", m, "--garment", "x", "-o", folio()}, 2,
                  {"leonore.coutil"});
    fs::permissions(folder_.path(), fs::perms(0555));
    for (const char* format : {"--svg", "--dxf", "--json"})
        expectRefused({"trace", folio(), format, "-o", newFile()}, 2, {"new.coutil"},
                      {.isOrdinaryUser = true});
    expectRefused({"sheets", folio(), "--paper", "A4", "--effort", "0", "-o", newFile()}, 2,
                  {"new.coutil"}, {.isOrdinaryUser = true});
}

// A slip in -o must not cost the client's file, whatever name it goes by.
TEST_F(BadInput, exportsNeverReplaceAFolio) {
    const std::string soft = (folder_ / "soft").string();
    const std::string hard = (folder_ / "hard").string();
    const std::string other = (folder_ / "other.coutil").string();
    fs::create_symlink(folio(), soft);
    fs::create_hard_link(folio(), hard);
    ASSERT_EQ(drafted(other).exitCode, 0);
    const FileState otherBefore = stateOf(other);
    for (const std::string& out : {folio(), soft, hard, other}) {
        for (const char* command : {"info", "check"}) {
            expectRefused({command, folio(), "-o", out}, 2, {out, "folio"});
            expectRefused({command, folio(), "--json", "-o", out}, 2, {out, "folio"});
        }
        for (const char* command : {"pattern", "trace"})
            for (const char* format : {"--json", "--svg", "--dxf"})
                expectRefused({command, folio(), format, "-o", out}, 2, {out, "folio"});
        expectRefused({"sheets", folio(), "--paper", "A4", "--effort", "0", "-o", out}, 2,
                      {out, "folio"});
    }
    EXPECT_EQ(stateOf(other), otherBefore);
}

TEST_F(BadInput, aDraftWantsAPlaceForAFolio) {
    const std::string m = demoFile("measurements.json");
    const std::string folder = folder_.path().string();
    expectRefused({"draft", "--measurements", m, "-o", folder}, 2, {folder, "written"});
    expectRefused({"draft", "--measurements", m, "-o", "/dev/full"}, 2, {"/dev/full", "written"});
    expectRefused({"draft", "--measurements", m, "--client", "Marzelline", "-o", folio()}, 2,
                  {"--client", "new folio"});
}

TEST_F(BadInput, fullDisk) {
    const std::string m = demoFile("measurements.json");
    const RunCircumstances little{.largestFileBytes = 3000};
    expectRefused({"draft", "--measurements", m, "--garment", "x", "-o", folio()}, 2, {"room"},
                  little);
    expectRefused({"draft", "--measurements", m, "-o", newFile()}, 2, {"room"}, little);
    expectRefused({"trace", folio(), "--svg", "-o", newFile()}, 2, {"room"}, little);
    expectRefused({"sheets", folio(), "--paper", "A4", "--effort", "0", "-o", newFile()}, 2,
                  {"room"}, little);
    expectRefused({"pattern", folio(), "--json"}, 2, {"room"}, {.out = "/dev/full"});
    expectRefused({"pattern", folio(), "--json", "-o", "/dev/full"}, 2, {"room"});
    expectRefused({"--help"}, 2, {"room"}, {.out = "/dev/full"});
}

TEST_F(BadInput, wrongCalls) {
    expectRefused({"drfat"}, 2, {"drfat"});
    expectRefused({"--wrong"}, 2, {"--wrong"});
    expectRefused({"info", folio(), "--wrong"}, 2, {"--wrong"});
    expectRefused({"info"}, 2, {"F.coutil"});
    expectRefused({"info", folio(), folio()}, 2, {"leonore.coutil"});
    expectRefused({"pattern", folio()}, 2, {"--svg"});
    expectRefused({"pattern", folio(), "--svg", "--dxf"}, 2, {"--svg", "--dxf"});
    expectRefused({"pattern", folio(), "--svg=yes"}, 2, {"--svg"});
    expectRefused({"pattern", folio(), "--json", "-o"}, 2, {"-o"});
    expectRefused({"draft", "--measurements", "--style", "x", "-o", newFile()}, 2,
                  {"--measurements"});
    expectRefused({"draft", "-o", newFile()}, 2, {"--measurements"});
    expectRefused({"draft", "--measurements", demoFile("measurements.json")}, 2, {"-o"});
    expectRefused({"pattern", folio(), "--json", "--garment", "none"}, 2, {"none", "Corset"});
    expectRefused({"pattern", folio(), "--json", "--revision", "3"}, 2, {"3"});
    expectRefused({"check", folio(), "--revision", "-1"}, 2, {"-1"});
    expectRefused({"trace", folio(), "--json", "--date", "tomorrow"}, 2, {"tomorrow"});
    expectRefused({"draft", "--measurements", demoFile("measurements.json"), "--block", "crinoline",
                   "-o", newFile()},
                  2, {"crinoline"});
}

TEST_F(BadInput, wrongSheets) {
    const auto refused = [&](const std::vector<std::string>& more,
                             const std::vector<std::string>& words) {
        std::vector<std::string> call{"sheets", folio(), "-o", newFile()};
        call.insert(call.end(), more.begin(), more.end());
        expectRefused(call, 2, words);
    };
    refused({}, {"--paper"});
    refused({"--paper", "napkin"}, {"napkin"});
    refused({"--paper", "10x10"}, {});
    refused({"--paper", "-5x300"}, {});
    refused({"--paper", "A4", "--paper", "A3"}, {"--paper"});
    refused({"--paper", "A4", "--margin", "wide"}, {"--margin", "wide"});
    refused({"--paper", "A4", "--margin", "-5"}, {"--margin", "-5", "0 mm and 50 mm"});
    refused({"--paper", "A4", "--margin", "500"}, {});
    refused({"--paper", "A4", "--overlap", "1e9"}, {"--overlap", "1e9", "0 mm and 40 mm"});
    refused({"--paper", "A4", "--scale-x", "1.5"}, {});
    refused({"--paper", "A4", "--scale-y", "nan"}, {});
    refused({"--paper", "A4", "--scale-y", "x"}, {"--scale-y", "x"});
    refused({"--paper", "A4", "--seed", "-1"}, {"--seed"});
    refused({"--paper", "A4", "--effort", "1e9"}, {"--effort"});
    refused({"--paper", "A4", "--effort", "nan"}, {"--effort"});
    refused({"--paper", "A4", "--portrait", "--landscape"}, {"--portrait", "--landscape"});
}

TEST_F(BadInput, aWindowWithoutADisplayIsOneLine) {
    expectRefused({}, 2, {"display"});
    expectRefused({folio()}, 2, {"display"});
}

}  // namespace
