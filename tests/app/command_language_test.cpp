// The command line speaks the user's language, and English where LC_ALL=C asks for it.
#include <gmock/gmock.h>

#include "tests/app/program_run.h"

namespace {

using namespace coutil::test;
using testing::HasSubstr;

std::string complaint(const std::string& locale, const std::string& language = {}) {
    RunCircumstances user;
    user.locale = locale;
    user.language = language;
    const ProgramRun run = runProgram({"info", "/nowhere/nobody.coutil"}, user);
    EXPECT_EQ(run.messages().size(), 1U) << run.err;
    return run.err;
}

TEST(CommandLanguage, isTheUsers) {
    EXPECT_THAT(complaint("de_DE.UTF-8"), HasSubstr("Diese Datei gibt es nicht"));
    EXPECT_THAT(complaint("en_US.UTF-8"), HasSubstr("there is no such file"));
    EXPECT_THAT(complaint("fi_FI.UTF-8"), HasSubstr("there is no such file"));  // not translated
}

// A script sets LC_ALL=C; a LANGUAGE inherited from the desktop must not undo that.
TEST(CommandLanguage, isEnglishForScripts) {
    EXPECT_THAT(complaint("C", "de"), HasSubstr("there is no such file"));
    EXPECT_THAT(complaint("C.UTF-8", "de"), HasSubstr("there is no such file"));
}

TEST(CommandLanguage, helpIsTranslated) {
    RunCircumstances user;
    user.locale = "de_DE.UTF-8";
    const ProgramRun run = runProgram({"sheets", "--help"}, user);
    EXPECT_EQ(run.exitCode, 0);
    EXPECT_THAT(run.out, HasSubstr("maßstabsgetreu"));
    EXPECT_THAT(run.out, HasSubstr("den Namen der Kundin weglassen"));
}

}  // namespace
