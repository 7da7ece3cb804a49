// Drawings that leave for other programs and come back, on the command line: cutter, comparing, one
// big page.
#include <fstream>
#include <iterator>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/app/demo_folio.h"

namespace {

using namespace coutil::test;
using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

class Exchange : public WithDemoFolio {
  protected:
    [[nodiscard]] std::string written(const std::string& name, const std::string& text) const {
        const std::string file = (folder_ / name).string();
        std::ofstream(file, std::ios::binary) << text;
        return file;
    }
    [[nodiscard]] std::string traced(const std::vector<std::string>& more) const {
        std::vector<std::string> words{"trace", folio()};
        words.insert(words.end(), more.begin(), more.end());
        const ProgramRun run = runProgram(words);
        EXPECT_EQ(run.exitCode, 0) << run.err;
        return run.out;
    }
    [[nodiscard]] ProgramRun checked(const std::string& svg,
                                     const std::vector<std::string>& more = {}) const {
        std::vector<std::string> words{"check", folio(), "--drawing", svg};
        words.insert(words.end(), more.begin(), more.end());
        return runProgram(words);
    }
};

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

TEST_F(Exchange, whatWasWrittenIsTheRevision) {
    for (const std::vector<std::string>& kind : std::vector<std::vector<std::string>>{
             {"--svg"}, {"--cutter", "--svg"}, {"--cutter", "--mirrored-too", "--svg"}}) {
        const std::string svg = written("back.svg", traced(kind));
        const ProgramRun run = checked(svg, {"--json"});
        const json out = json::parse(run.out);
        const json& panels = out["garments"][0]["drawing"];
        EXPECT_GE(panels.size(), 4U);
        for (const json& panel : panels) EXPECT_LE(panel["largest"].get<double>(), 0.001);
        EXPECT_THAT(run.out, Not(HasSubstr("drawing_")));
    }
    const ProgramRun pattern = runProgram({"pattern", folio(), "--svg"});
    EXPECT_THAT(checked(written("back.svg", pattern.out)).out, HasSubstr("drawing of panel 1"));
}

TEST_F(Exchange, aKerfIsComparedWithTheSameKerf) {
    const std::string svg = written("cut.svg", traced({"--cutter", "--svg", "--kerf", "0.4"}));
    EXPECT_THAT(checked(svg, {"--kerf", "0.4", "--json"}).out, Not(HasSubstr("drawing_")));
    const ProgramRun without = checked(svg, {"--json"});
    EXPECT_EQ(without.exitCode, 1);
    EXPECT_THAT(without.out, HasSubstr("drawing_panel_off"));
}

TEST_F(Exchange, whatWasDoneToADrawingIsTold) {
    const std::string svg = traced({"--svg"});
    const auto at = svg.find("viewBox=\"0 0 ");
    const std::string width = svg.substr(at + 13, svg.find(' ', at + 13) - at - 13);
    // The page made half as wide and high as it was: everything at half its size.
    const std::string halved = replaced(svg, "width=\"" + width + "mm\"",
                                        "width=\"" + std::to_string(std::stod(width) / 2) + "mm\"");
    const ProgramRun scaled = checked(written("half.svg", halved));
    EXPECT_EQ(scaled.exitCode, 1);
    EXPECT_THAT(scaled.out, HasSubstr("drawn at 50"));
    const ProgramRun moved = checked(
        written("moved.svg", replaced(svg, "<g id=\"panel-2\"",
                                      "<g transform=\"rotate(30) translate(5 9)\" id=\"panel-2\"")),
        {"--json"});
    EXPECT_THAT(moved.out, Not(HasSubstr("drawing_")));
    const ProgramRun lost =
        checked(written("lost.svg", replaced(svg, "id=\"panel-3\"", "id=\"other\"")));
    EXPECT_EQ(lost.exitCode, 1);
    EXPECT_THAT(lost.out, HasSubstr("Panel 3 is not in the drawing"));
}

void expectRefused(const std::vector<std::string>& words, int exitCode, const char* said) {
    const ProgramRun run = runProgram(words);
    EXPECT_EQ(run.exitCode, exitCode) << run.err;
    EXPECT_EQ(run.out, "");
    EXPECT_EQ(run.messages().size(), 1U) << run.err;
    EXPECT_THAT(run.err, HasSubstr(said));
}

TEST_F(Exchange, wrongDrawingsAndCallsAreOneClearLine) {
    const std::string foreign = written("foreign.svg", "<svg width=\"1mm\" height=\"1mm\"/>");
    const std::string broken = written("broken.svg", "<svg><g></svg>");
    expectRefused({"check", folio(), "--drawing", foreign}, 2, "No panel of Coutil");
    expectRefused({"check", folio(), "--drawing", broken}, 2, "cannot be read");
    expectRefused({"check", folio(), "--drawing", (folder_ / "none.svg").string()}, 3, "none.svg");
    expectRefused({"check", folio(), "--kerf", "0.2"}, 2, "--drawing");
    expectRefused({"trace", folio(), "--svg", "--kerf", "0.2"}, 2, "--cutter");
    expectRefused({"trace", folio(), "--json", "--cutter"}, 2, "--json");
    for (const char* kerf : {"-1", "2.1", "wide", "nan"}) {
        expectRefused({"trace", folio(), "--svg", "--cutter", "--kerf", kerf}, 2, "--kerf");
    }
    expectRefused(
        {"sheets", folio(), "--one-page", "--paper", "A4", "-o", (folder_ / "x.pdf").string()}, 2,
        "--one-page");
}

TEST_F(Exchange, oneBigPage) {
    const std::string pdf = (folder_ / "big.pdf").string();
    const ProgramRun run = runProgram({"sheets", folio(), "--one-page", "-o", pdf});
    ASSERT_EQ(run.exitCode, 0) << run.err;
    std::ifstream in(pdf, std::ios::binary);
    const std::string bytes((std::istreambuf_iterator<char>(in)), {});
    EXPECT_THAT(bytes, HasSubstr("/Count 1"));
    EXPECT_THAT(bytes, HasSubstr("/OCProperties"));
}

}  // namespace
