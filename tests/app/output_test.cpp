// `coutil info, pattern, check, trace, sheets` on the demo client.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/app/demo_folio.h"

namespace {

using namespace coutil::test;
using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

class Output : public WithDemoFolio {
  protected:
    // A good run prints its result and, for the demo client, no message.
    std::string printed(std::vector<std::string> words) {
        words.insert(words.begin() + 1, folio());
        const FileState before = stateOf(folio());
        const ProgramRun run = runProgram(words);
        EXPECT_EQ(run.exitCode, 0) << run.err;
        EXPECT_EQ(run.err, "");
        EXPECT_EQ(stateOf(folio()), before) << "reading changed the folio";
        return run.out;
    }
};

TEST_F(Output, info) {
    const std::string text = printed({"info"});
    EXPECT_THAT(text, HasSubstr("leonore"));
    EXPECT_THAT(text, HasSubstr("2026-03-02"));
    EXPECT_THAT(text, HasSubstr("97 cm"));
    EXPECT_THAT(text, HasSubstr("Corset"));
    const json info = json::parse(printed({"info", "--json"}));
    EXPECT_EQ(info["coutil"], "info");
    EXPECT_EQ(info["client"], "leonore");
    EXPECT_EQ(info["measurement_sets"][0]["values"]["waist_girth"], 76);
    EXPECT_EQ(info["garments"][0]["timeline"][0]["state"], "pencil");
    EXPECT_EQ(info["garments"][0]["style"]["panels_per_half"], 6);
}

TEST_F(Output, patternJson) {
    const json pattern = json::parse(printed({"pattern", "--json"}));
    EXPECT_EQ(pattern["coutil"], "pattern");
    EXPECT_EQ(pattern["revision"]["id"], "pencil");
    EXPECT_EQ(pattern["revision"]["date"], "2026-03-03");
    EXPECT_EQ(pattern["panels"].size(), 6U);
    EXPECT_EQ(pattern["seams"].size(), 5U);
    // The promise: girths equal targets within 0.01 mm. 760 - 50 mm by hand.
    for (const json& level : pattern["levels"]) {
        if (level["name"] != "waist") continue;
        EXPECT_NEAR(level["target"].get<double>(), 710, 1e-9);
        EXPECT_NEAR(level["pattern"].get<double>(), 710, 0.01);
    }
}

TEST_F(Output, drawings) {
    for (const char* command : {"pattern", "trace"}) {
        const std::string svg = printed({command, "--svg"});
        EXPECT_THAT(svg, HasSubstr("<svg"));
        EXPECT_THAT(svg, HasSubstr("mm\""));
        EXPECT_THAT(svg, HasSubstr("leonore"));
        EXPECT_THAT(printed({command, "--svg", "--no-name"}), Not(HasSubstr("leonore")));
        const std::string dxf = printed({command, "--dxf"});
        EXPECT_THAT(dxf, HasSubstr("SECTION"));
        EXPECT_THAT(dxf, HasSubstr("EOF"));
        EXPECT_THAT(printed({command, "--dxf", "--no-name"}), Not(HasSubstr("leonore")));
    }
}

TEST_F(Output, traceJson) {
    const json tracings = json::parse(printed({"trace", "--json"}));
    EXPECT_EQ(tracings["coutil"], "tracings");
    EXPECT_EQ(tracings["tracings"].size(), 6U);
    EXPECT_FALSE(tracings["tracings"][0]["cutting"].empty());
}

TEST_F(Output, check) {
    // Notes are told and are no fault: printed() wants exit code 0.
    EXPECT_THAT(printed({"check"}), HasSubstr("too curved for a channel"));
    const json check = json::parse(printed({"check", "--json"}));
    EXPECT_EQ(check["file"], "sound");
    for (const json& problem : check["garments"][0]["problems"])
        EXPECT_EQ(problem["severity"], "note") << problem;
}

TEST_F(Output, checkTellsProblemsByItsExitCode) {
    // 25 % less than the body at the waist is more than anyone should lace.
    const std::string file = (folder_ / "tight.coutil").string();
    ASSERT_EQ(drafted(file, {"--set", "ease.waist=-190"}).exitCode, 0);
    const ProgramRun run = runProgram({"check", file});
    EXPECT_EQ(run.exitCode, 1);
    EXPECT_THAT(run.out, HasSubstr("warning"));
    const ProgramRun asJson = runProgram({"check", file, "--json"});
    EXPECT_EQ(asJson.exitCode, 1);
    EXPECT_EQ(json::parse(asJson.out)["garments"][0]["problems"][0]["code"], "reduction_large");
}

TEST_F(Output, sheets) {
    const std::string pdf = (folder_ / "a.pdf").string();
    EXPECT_EQ(printed({"sheets", "--paper", "A4", "--effort", "0.1", "-o", pdf}), "");
    const std::string bytes = bytesIn(pdf);
    EXPECT_EQ(bytes.substr(0, 5), "%PDF-");
    EXPECT_THAT(bytes.substr(bytes.size() - 8), HasSubstr("%%EOF"));
    EXPECT_EQ(printed({"sheets", "--paper", "A4", "--effort", "0.1", "-o", pdf}), "");
    EXPECT_EQ(bytesIn(pdf), bytes) << "a repeated run gave other bytes";
    EXPECT_EQ(printed({"sheets", "--paper", "letter", "--landscape", "--margin", "12", "--overlap",
                       "0.5 in", "--scale-x", "1.004", "--effort", "0", "-o", pdf}),
              "");
    EXPECT_NE(bytesIn(pdf), bytes);
    EXPECT_EQ(folder_.entryCount(), 2U);
}

TEST_F(Output, repeatedRunsGiveTheSameBytes) {
    for (const char* command : {"pattern", "trace"})
        for (const char* format : {"--json", "--svg", "--dxf"}) {
            const std::string once = printed({command, format, "--date", "2026-04-01"});
            EXPECT_EQ(printed({command, format, "--date", "2026-04-01"}), once);
            EXPECT_THAT(once, HasSubstr("2026-04-01"));
        }
}

TEST_F(Output, fileAndStandardOutputHoldTheSame) {
    const std::string out = (folder_ / "p.json").string();
    const std::string bytes = printed({"pattern", "--json"});
    EXPECT_EQ(printed({"pattern", "--json", "-o", out}), "");
    EXPECT_EQ(bytesIn(out), bytes);
    EXPECT_EQ(printed({"pattern", "--json", "-o", "-"}), bytes);
    EXPECT_EQ(printed({"pattern", "--json", "-o", "/dev/stdout"}), bytes);
}

TEST_F(Output, oneOfSeveralGarmentsIsNamed) {
    ASSERT_EQ(drafted(folio(), {"--garment", "Act two", "--set", "panels_per_half=4"}).exitCode, 0);
    const ProgramRun run = runProgram({"pattern", folio(), "--json"});
    EXPECT_EQ(run.exitCode, 2);
    ASSERT_EQ(run.messages().size(), 1U) << run.err;
    EXPECT_THAT(run.err, HasSubstr("--garment"));
    EXPECT_THAT(run.err, HasSubstr("Act two"));
    EXPECT_EQ(json::parse(printed({"pattern", "--json", "--garment", "Act two"}))["panels"].size(),
              4U);
    EXPECT_THAT(printed({"check"}), HasSubstr("Act two"));
}

TEST_F(Output, latestAndPencilAreTheSameYet) {
    const std::string latest = printed({"pattern", "--json", "--revision", "latest"});
    EXPECT_EQ(printed({"pattern", "--json", "--revision", "pencil"}), latest);
    EXPECT_EQ(printed({"pattern", "--json"}), latest);
}

TEST_F(Output, helpAndVersion) {
    const ProgramRun help = runProgram({"--help"});
    EXPECT_EQ(help.exitCode, 0);
    for (const char* command : {"draft", "info", "pattern", "check", "trace", "sheets"}) {
        EXPECT_THAT(help.out, HasSubstr(command));
        const ProgramRun one = runProgram({command, "--help"});
        EXPECT_EQ(one.exitCode, 0);
        EXPECT_THAT(one.out, HasSubstr("-o "));
    }
    const ProgramRun version = runProgram({"--version"});
    EXPECT_EQ(version.exitCode, 0);
    EXPECT_THAT(version.out, testing::MatchesRegex("coutil [0-9.]+\n"));
}

}  // namespace
