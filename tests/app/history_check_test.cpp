// What `check` says of confirmed revisions: tampered, drawn otherwise by today's rules, confirmed
// with errors.
#include <fstream>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "core/revision/ink.h"
#include "core/store/folio_file.h"
#include "core/store/text_formats.h"
#include "tests/app/demo_folio.h"
#include "tests/core/store/file_state.h"

namespace {

using namespace coutil;
using namespace coutil::test;
using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

class HistoryCheck : public WithDemoFolio {
  protected:
    void SetUp() override {
        WithDemoFolio::SetUp();
        ASSERT_EQ(
            runProgram({"confirm", folio(), "--date", "2026-03-05", "--note", "as it was drafted"})
                .exitCode,
            0);
        const std::string file = (folder_ / "alterations.json").string();
        std::ofstream(file) << R"({"coutil":"alterations","version":1,"alterations":[
            {"kind":"shape_seam","seam":"2-3","amounts":[[35,8]]}]})";
        ASSERT_EQ(
            runProgram({"alter", folio(), "--alterations", file, "--date", "2026-03-10"}).exitCode,
            0);
        ASSERT_EQ(runProgram({"confirm", folio(), "--date", "2026-03-12"}).exitCode, 0);
    }
    // The folio with its second revision as another program's rules could have confirmed it.
    std::string withSecond(void (*change)(RevisionContent&)) {
        Folio folio = *readFolio(this->folio());
        RevisionContent content = folio.garments[0].revisions[1]->content();
        change(content);
        std::string recipe = writeRecipeJson(content.recipe);
        folio.garments[0].revisions[1] = inkOver(std::move(content), std::move(recipe));
        const std::filesystem::path file = folder_ / "other.coutil";
        EXPECT_FALSE(writeFolio(folio, file));
        return file.string();
    }
    static json checked(const std::string& file) {
        const ProgramRun run = runProgram({"check", "--json", file});
        EXPECT_EQ(run.exitCode, 0) << run.out << run.err;
        return json::parse(run.out)["garments"][0];
    }
};

TEST_F(HistoryCheck, unchangedRulesAreNoNews) {
    EXPECT_THAT(checked(folio()).dump(), Not(HasSubstr("rules_changed")));
}

TEST_F(HistoryCheck, changedRulesAreANoteAndChangeNothing) {
    const std::string file = withSecond([](RevisionContent& content) {
        std::get<ShapeSeam>(content.recipe.alterations.at(0).change).amounts.at(0).amountMm = 7;
    });
    const FileState before = stateOf(file);
    const json check = checked(file);
    int found = 0;
    for (const json& problem : check["problems"]) {
        if (problem["code"] != "rules_changed") continue;
        ++found;
        EXPECT_EQ(problem["severity"], "note");
        EXPECT_THAT(problem.dump(), HasSubstr("Revision 2: today’s drafting rules"));
        EXPECT_THAT(problem.dump(), HasSubstr("0.5 mm differently in panel"));
    }
    EXPECT_EQ(found, 1);
    EXPECT_EQ(stateOf(file), before);
}

TEST_F(HistoryCheck, acceptedErrorsAreToldWithTheirReason) {
    EXPECT_TRUE(checked(folio())["errors_accepted"].empty());
    const std::string file = withSecond([](RevisionContent& content) {
        content.errorsAccepted = "eased in by hand\nseam_lengths_differ 2-3 2";
    });
    const json accepted = checked(file)["errors_accepted"];
    ASSERT_EQ(accepted.size(), 1U);
    EXPECT_EQ(accepted[0]["revision"], 2);
    EXPECT_EQ(accepted[0]["text"], "eased in by hand\nseam_lengths_differ 2-3 2");
    const ProgramRun run = runProgram({"check", file});
    EXPECT_EQ(run.exitCode, 0);
    EXPECT_THAT(run.out, HasSubstr("revision 2 was confirmed (1): eased in by hand"));
}

TEST_F(HistoryCheck, aTamperedRevisionIsNamed) {
    std::string bytes = stateOf(folio()).bytes;
    const std::size_t at = bytes.find("as it was drafted");
    ASSERT_NE(at, std::string::npos);
    bytes.replace(at, 5, "so it");
    std::ofstream(folio(), std::ios::binary | std::ios::trunc) << bytes;
    const ProgramRun run = runProgram({"check", folio()});
    EXPECT_EQ(run.exitCode, 3);
    EXPECT_EQ(run.messages().size(), 1U);
    EXPECT_THAT(run.err, HasSubstr("Revision 1 of "));
    EXPECT_THAT(run.err, HasSubstr("not what was confirmed"));
}

}  // namespace
