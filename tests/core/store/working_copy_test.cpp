#include "core/store/working_copy.h"

#include <random>

#include <gtest/gtest.h>
#include <sys/stat.h>

#include "core/store/folio_file.h"
#include "tests/core/store/child_process.h"
#include "tests/core/store/file_state.h"
#include "tests/core/store/sample_folio.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;
using namespace coutil::test;
namespace fs = std::filesystem;

std::shared_ptr<WorkingCopy> begun(const fs::path& folder, const Folio& folio,
                                   const fs::path& original) {
    auto copy = WorkingCopy::begin(folder, folio, original);
    EXPECT_TRUE(copy) << (copy ? "" : copy.problems.front().detail);
    return copy ? *copy : nullptr;
}

TEST(WorkingCopy, aLivingHoldersFileIsNotOffered) {
    const ScratchFolder folder;
    const auto copy = begun(folder / "state", sampleFolio(0), folder / "a.coutil");
    ASSERT_FALSE(copy->record(sampleFolio(1), "2026-05-01T10:00:00Z"));
    EXPECT_TRUE(recoverableIn(folder / "state").empty());
    // Nor to another program.
    EXPECT_EQ(inChild([&] { return recoverableIn(folder / "state").empty() ? 0 : 1; }), 0);
    EXPECT_FALSE(copy->record(sampleFolio(2), "2026-05-01T10:00:01Z"));
}

TEST(WorkingCopy, whatADeadHolderLeftIsOffered) {
    const ScratchFolder folder;
    EXPECT_FALSE(begun(folder / "state", sampleFolio(0), folder / "a.coutil")
                     ->record(sampleFolio(1), "2026-05-01T10:00:00Z"));
    EXPECT_FALSE(begun(folder / "state", sampleFolio(0), "")
                     ->record(sampleFolio(2), "2026-05-01T10:00:07Z"));
    const std::vector<Recoverable> found = recoverableIn(folder / "state");
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].changedAt, "2026-05-01T10:00:07Z");
    EXPECT_TRUE(found[0].original.empty());
    EXPECT_EQ(found[0].client, sampleFolio(2).client);
    EXPECT_EQ(found[1].original, folder / "a.coutil");
    EXPECT_EQ(*recoveredFolio(found[0]), sampleFolio(2));
    EXPECT_EQ(*recoveredFolio(found[1]), sampleFolio(1));
    dropRecoverable(found[0]);
    EXPECT_EQ(recoverableIn(folder / "state").size(), 1U);
    dropRecoverable(found[1]);
    EXPECT_TRUE(fs::is_empty(folder / "state"));
    EXPECT_EQ(recoveredFolio(found[1]).problems.front().code, ProblemCode::fileMissing);
}

TEST(WorkingCopy, discardLeavesNothing) {
    const ScratchFolder folder;
    const auto copy = begun(folder / "state", sampleFolio(0), "");
    ASSERT_FALSE(copy->record(sampleFolio(1), "2026-05-01T10:00:00Z"));
    copy->discard();
    EXPECT_TRUE(fs::is_empty(folder / "state"));
    EXPECT_TRUE(copy->record(sampleFolio(1), "2026-05-01T10:00:00Z"));
    copy->discard();
}

TEST(WorkingCopy, whatIsSafeInTheFolioIsNotOffered) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(1), folder / "a.coutil"));
    begun(folder / "state", sampleFolio(1), folder / "a.coutil");
    EXPECT_TRUE(recoverableIn(folder / "state").empty());
    EXPECT_TRUE(fs::is_empty(folder / "state"));
    // Recovered once, and the program died again before the next change: still offered.
    begun(folder / "state", sampleFolio(2), folder / "a.coutil");
    const auto found = recoverableIn(folder / "state");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(*recoveredFolio(found[0]), sampleFolio(2));
    EXPECT_EQ(found[0].changedAt.size(), 20U) << found[0].changedAt;
}

TEST(WorkingCopy, followsTheFolioToAnotherName) {
    const ScratchFolder folder;
    auto copy = begun(folder / "state", sampleFolio(0), "");
    copy->setOriginal(folder / "b.coutil");
    copy.reset();
    ASSERT_EQ(recoverableIn(folder / "state").size(), 1U);
    EXPECT_EQ(recoverableIn(folder / "state")[0].original, folder / "b.coutil");
}

TEST(WorkingCopy, onlyTheOwnerCanLook) {
    const ScratchFolder folder;
    const auto copy = begun(folder / "state", sampleFolio(0), "");
    EXPECT_EQ(stateOf(folder / "state").mode & 0777U, 0700U);
    for (const auto& entry : fs::directory_iterator(folder / "state"))
        EXPECT_EQ(stateOf(entry.path()).mode & 0077U, 0U) << entry.path();
}

TEST(WorkingCopy, aStateFolderThatCannotBeMadeIsOneProblem) {
    const ScratchFolder folder;
    putBytes(folder / "state", "a file in its place");
    const auto copy = WorkingCopy::begin(folder / "state", sampleFolio(0), "");
    ASSERT_FALSE(copy);
    ASSERT_EQ(copy.problems.size(), 1U);
    EXPECT_EQ(copy.problems.front().code, ProblemCode::fileUnwritable);
    EXPECT_TRUE(recoverableIn(folder / "nowhere").empty());
}

TEST(WorkingCopy, rubbishInTheStateFolderIsPassedOver) {
    const ScratchFolder folder;
    fs::create_directory(folder / "state");
    putBytes(folder / "state/x.working", "not a database");
    putBytes(folder / "state/y.working", "");
    begun(folder / "state", sampleFolio(0), "");
    EXPECT_EQ(recoverableIn(folder / "state").size(), 1U);
    EXPECT_EQ(bytesIn(folder / "state/x.working"), "not a database");
}

// A child records one state after the other and tells through a pipe which ones record() called
// durable. Killed at random moments 70 times: the last one told, or the one after it, comes back.
TEST(WorkingCopy, killedHolderLosesNothingItCalledDurable) {
    const ScratchFolder folder;
    const auto timed = begun(folder / "first", sampleFolio(0), "");
    const unsigned long oneRecord = microsecondsOf(
        [&] { EXPECT_FALSE(timed->record(sampleFolio(1), "2026-05-01T10:00:00Z")); });
    std::minstd_rand random(5);
    int laterThanFirst = 0;
    for (int round = 0; round < 70; ++round) {
        const fs::path state = folder / ("state" + std::to_string(round));
        int told[2];
        ASSERT_EQ(::pipe(told), 0);
        std::shared_ptr<WorkingCopy> copy;
        int variant = 0;
        killedAfter(random() % (3 * oneRecord), [&] {
            if (!copy) copy = *WorkingCopy::begin(state, sampleFolio(0), "");
            ++variant;
            if (!copy->record(sampleFolio(variant), "2026-05-01T10:00:00Z"))
                (void)!::write(told[1], &variant, sizeof variant);
        });
        ::close(told[1]);
        int last = 0;
        for (int seen = 0; ::read(told[0], &seen, sizeof seen) == sizeof seen;) last = seen;
        ::close(told[0]);
        const auto found = recoverableIn(state);
        ASSERT_EQ(found.size(), 1U) << "round " << round;
        const Outcome<Folio> folio = recoveredFolio(found[0]);
        ASSERT_TRUE(folio);
        ASSERT_TRUE(*folio == sampleFolio(last) || *folio == sampleFolio(last + 1))
            << "round " << round << ": told " << last;
        if (last > 1) ++laterThanFirst;
    }
    EXPECT_GT(laterThanFirst, 20) << "the children were killed too early to show anything";
}

}  // namespace
