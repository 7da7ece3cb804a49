#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace coutil::test {

// What a run of the real program came to.
struct ProgramRun {
    int exitCode = -1;  // 128 + signal when it was killed
    std::string out;
    std::string err;

    // Lines on standard error.
    [[nodiscard]] std::vector<std::string> messages() const;
};

// How a run differs from a plain one.
struct RunCircumstances {
    bool isOrdinaryUser = false;      // not root, whose writing nothing refuses
    long long largestFileBytes = -1;  // a disk with so much room
    std::filesystem::path out = {};   // where standard output goes instead of into ProgramRun
    // The user's language: LC_ALL and LANGUAGE are set where not empty.
    std::string locale = {};
    std::string language = {};
};

// Runs COUTIL_PROGRAM with these words, in an environment that has neither DISPLAY nor any of Qt's
// variables, and waits for its end.
[[nodiscard]] ProgramRun runProgram(const std::vector<std::string>& words,
                                    const RunCircumstances& circumstances = {});

// A file of the demo client.
[[nodiscard]] std::string demoFile(const std::string& name);

}  // namespace coutil::test
