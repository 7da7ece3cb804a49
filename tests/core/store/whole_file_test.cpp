#include "core/store/whole_file.h"

#include <csignal>
#include <random>

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/file.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include "tests/core/store/child_process.h"
#include "tests/core/store/file_state.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;
using namespace coutil::test;
namespace fs = std::filesystem;

TEST(WholeFile, writesNewAndReplaces) {
    const ScratchFolder folder;
    EXPECT_FALSE(writeWholeFile(folder / "a.svg", "first"));
    EXPECT_EQ(bytesIn(folder / "a.svg"), "first");
    EXPECT_FALSE(writeWholeFile(folder / "a.svg", std::string(300'000, 'x') + '\0'));
    EXPECT_EQ(bytesIn(folder / "a.svg"), std::string(300'000, 'x') + '\0');
    EXPECT_EQ(readWholeFile(folder / "a.svg").value->size(), 300'001U);
    EXPECT_EQ(folder.entryCount(), 1U);
}

TEST(WholeFile, rightsOfNewAndReplacedFiles) {
    const ScratchFolder folder;
    EXPECT_FALSE(writeWholeFile(folder / "private", "a", NewFileRights::ownerOnly));
    EXPECT_EQ(stateOf(folder / "private").mode & 0777U, 0600U);
    fs::permissions(folder / "private", fs::perms(0640));
    EXPECT_FALSE(writeWholeFile(folder / "private", "b", NewFileRights::ownerOnly));
    EXPECT_EQ(stateOf(folder / "private").mode & 0777U, 0640U);
    const mode_t mask = ::umask(022);
    EXPECT_FALSE(writeWholeFile(folder / "shared", "a"));
    ::umask(mask);
    EXPECT_EQ(stateOf(folder / "shared").mode & 0777U, 0644U);
}

TEST(WholeFile, followsALinkAndTakesLongNames) {
    const ScratchFolder folder;
    fs::create_directory(folder / "synced");
    putBytes(folder / "synced/real", "old");
    fs::create_symlink("synced/real", folder / "link");
    EXPECT_FALSE(writeWholeFile(folder / "link", "new"));
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
    EXPECT_EQ(bytesIn(folder / "synced/real"), "new");
    const std::string longName(250, 'n');
    EXPECT_FALSE(writeWholeFile(folder / longName, "x"));
    EXPECT_EQ(bytesIn(folder / longName), "x");
}

TEST(WholeFile, leftoverOfAKilledSaveGoesAndALivingOneStays) {
    const ScratchFolder folder;
    putBytes(folder / ".a.saving", "half a fi");
    EXPECT_FALSE(writeWholeFile(folder / "a", "x"));
    EXPECT_EQ(folder.entryCount(), 1U);
    putBytes(folder / ".a.saving", "another program writes this just now");
    const int held = ::open((folder / ".a.saving").c_str(), O_RDWR | O_CLOEXEC);
    ASSERT_EQ(::flock(held, LOCK_EX), 0);
    EXPECT_FALSE(writeWholeFile(folder / "a", "y"));
    EXPECT_EQ(bytesIn(folder / ".a.saving"), "another program writes this just now");
    EXPECT_EQ(bytesIn(folder / "a"), "y");
    EXPECT_EQ(folder.entryCount(), 2U);
    ::close(held);
}

void expectRefused(const std::optional<Problem>& problem, ProblemCode code, const fs::path& file) {
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->code, code) << problem->detail;
    EXPECT_EQ(problem->subject, file.string());
    EXPECT_EQ(problem->severity, Severity::error);
}

TEST(WholeFile, refusesFoldersReadOnlyFilesAndMissingFolders) {
    const ScratchFolder folder;
    expectRefused(writeWholeFile(folder.path(), "x"), ProblemCode::fileUnwritable, folder.path());
    putBytes(folder / "marked", "old");
    fs::permissions(folder / "marked", fs::perms(0444));
    const FileState before = stateOf(folder / "marked");
    expectRefused(writeWholeFile(folder / "marked", "x"), ProblemCode::fileUnwritable,
                  folder / "marked");
    EXPECT_EQ(stateOf(folder / "marked"), before);
    expectRefused(writeWholeFile(folder / "no/a", "x"), ProblemCode::fileUnwritable,
                  folder / "no/a");
    expectRefused(writeWholeFile(folder / "marked/a", "x"), ProblemCode::fileUnwritable,
                  folder / "marked/a");
    EXPECT_EQ(folder.entryCount(), 1U);
}

TEST(WholeFile, refusesAFolderThatMayNotBeWritten) {
    const ScratchFolder folder;
    putBytes(folder / "a", "old");
    fs::permissions(folder / "a", fs::perms(0666));
    fs::permissions(folder.path(), fs::perms(0555));
    const FileState before = stateOf(folder / "a");
    EXPECT_EQ(asOrdinaryUser([&] {
                  const auto replaced = writeWholeFile(folder / "a", "x");
                  const auto made = writeWholeFile(folder / "b", "x");
                  return replaced && replaced->code == ProblemCode::fileUnwritable && made &&
                                 made->code == ProblemCode::fileUnwritable
                             ? 0
                             : 1;
              }),
              0);
    EXPECT_EQ(stateOf(folder / "a"), before);
    EXPECT_EQ(folder.entryCount(), 1U);
}

TEST(WholeFile, fullDiskLeavesEverythingAsItWas) {
    const ScratchFolder folder;
    putBytes(folder / "a", "old");
    const FileState before = stateOf(folder / "a");
    // A file that may not grow over 10 kB stands for a disk with 10 kB left; the error arrives in
    // the middle of the second write either way.
    EXPECT_EQ(inChild([&] {
                  ::signal(SIGXFSZ, SIG_IGN);
                  const rlimit limit{10'000, 10'000};
                  if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return 2;
                  const std::string bytes(50'000, 'x');
                  const auto replaced = writeWholeFile(folder / "a", bytes);
                  const auto made = writeWholeFile(folder / "b", bytes);
                  return replaced && replaced->code == ProblemCode::diskFull && made &&
                                 made->code == ProblemCode::diskFull
                             ? 0
                             : 1;
              }),
              0);
    EXPECT_EQ(stateOf(folder / "a"), before);
    EXPECT_EQ(folder.entryCount(), 1U);
    expectRefused(writeWholeFile("/dev/full", "x"), ProblemCode::diskFull, "/dev/full");
}

TEST(WholeFile, readingNamesWhatIsWrong) {
    const ScratchFolder folder;
    const auto codeOf = [](const Outcome<std::string>& outcome) {
        return outcome ? std::string("read") : std::string(keyOf(outcome.problems.front().code));
    };
    EXPECT_EQ(codeOf(readWholeFile(folder / "none")), "file_missing");
    EXPECT_EQ(codeOf(readWholeFile(folder.path())), "file_unreadable");
    putBytes(folder / "a", std::string(2000, 'x'));
    EXPECT_EQ(codeOf(readWholeFile(folder / "a", 1999)), "file_unreadable");
    EXPECT_EQ(codeOf(readWholeFile(folder / "a", 2000)), "read");
    fs::permissions(folder / "a", fs::perms(0200));
    fs::permissions(folder.path(), fs::perms(0755));
    EXPECT_EQ(asOrdinaryUser(
                  [&] { return codeOf(readWholeFile(folder / "a")) == "file_unreadable" ? 0 : 1; }),
              0);
}

// Killed 80 times at random moments of saving: always one of the whole states.
TEST(WholeFile, killedWhileSavingHoldsOldOrNew) {
    const ScratchFolder folder;
    const std::string even(200'000, 'e');
    const std::string odd(150'000, 'o');
    const auto saveBoth = [&] {
        (void)writeWholeFile(folder / "a", odd);
        (void)writeWholeFile(folder / "a", even);
    };
    const unsigned long both = microsecondsOf(saveBoth);
    std::minstd_rand random(7);
    int changes = 0;
    for (int round = 0; round < 80; ++round) {
        const std::string before = bytesIn(folder / "a");
        killedAfter(random() % (2 * both), saveBoth);
        const std::string now = bytesIn(folder / "a");
        ASSERT_TRUE(now == even || now == odd) << now.size() << " bytes in round " << round;
        if (now != before) ++changes;
        ASSERT_LE(folder.entryCount(), 2U);
    }
    EXPECT_GT(changes, 5) << both << " us a pair: the child was killed before it could do anything";
    ASSERT_FALSE(writeWholeFile(folder / "a", even));
    EXPECT_EQ(folder.entryCount(), 1U);
}

}  // namespace
