#pragma once

#include <gtest/gtest.h>

#include "tests/app/program_run.h"
#include "tests/core/store/file_state.h"
#include "tests/core/store/scratch_folder.h"

namespace coutil::test {

// A folder with the demo client's folio, drafted by the program itself.
class WithDemoFolio : public testing::Test {
  protected:
    void SetUp() override {
        const ProgramRun run = drafted(folio());
        ASSERT_EQ(run.exitCode, 0) << run.err;
    }
    [[nodiscard]] ProgramRun drafted(const std::string& file,
                                     const std::vector<std::string>& more = {}) const {
        std::vector<std::string> words{"draft",
                                       "--measurements",
                                       demoFile("measurements.json"),
                                       "--style",
                                       demoFile("style.json"),
                                       "--date",
                                       "2026-03-03",
                                       "-o",
                                       file};
        words.insert(words.end(), more.begin(), more.end());
        return runProgram(words);
    }
    [[nodiscard]] std::string folio() const { return (folder_ / "leonore.coutil").string(); }

    ScratchFolder folder_;
};

}  // namespace coutil::test
