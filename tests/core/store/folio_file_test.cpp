#include "core/store/folio_file.h"

#include <csignal>
#include <random>

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include "core/store/folio_file/folio_image.h"
#include "tests/core/store/child_process.h"
#include "tests/core/store/file_state.h"
#include "tests/core/store/sample_folio.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;
using namespace coutil::test;
namespace fs = std::filesystem;

std::string verdictOn(const fs::path& file) {
    const Outcome<Folio> outcome = readFolio(file);
    if (outcome) return "read";
    EXPECT_EQ(outcome.problems.size(), 1U);
    EXPECT_EQ(outcome.problems.front().subject, file.string());
    return std::string(keyOf(outcome.problems.front().code));
}

// The verdict, and that looking changed nothing: neither bytes nor times nor what lies beside it.
std::string verdictUnchanged(const ScratchFolder& folder, const fs::path& file) {
    const FileState before = stateOf(file);
    const std::size_t count = folder.entryCount();
    std::string verdict = verdictOn(file);
    EXPECT_EQ(stateOf(file), before);
    EXPECT_EQ(folder.entryCount(), count);
    return verdict;
}

// With the SQLite library itself, as another program would.
void runSql(const fs::path& file, const std::string& sql) {
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &database), SQLITE_OK);
    char* error = nullptr;
    EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, &error), SQLITE_OK) << error;
    sqlite3_free(error);
    sqlite3_close(database);
}

TEST(FolioFile, keepsEveryValue) {
    const ScratchFolder folder;
    for (int variant = 0; variant < 3; ++variant) {
        ASSERT_FALSE(writeFolio(sampleFolio(variant), folder / "a.coutil"));
        const Outcome<Folio> again = readFolio(folder / "a.coutil");
        ASSERT_TRUE(again);
        EXPECT_EQ(*again, sampleFolio(variant));
        EXPECT_TRUE(again.problems.empty());
        // Revisions count as equal by their digests; here every value.
        for (std::size_t g = 0; g < 2; ++g) {
            const Garment made = sampleFolio(variant).garments[g];
            for (std::size_t r = 0; r < made.revisions.size(); ++r)
                EXPECT_EQ(again->garments[g].revisions[r]->content(), made.revisions[r]->content());
        }
    }
    EXPECT_EQ(folder.entryCount(), 1U);
    EXPECT_EQ(stateOf(folder / "a.coutil").mode & 0777U, 0600U);
}

TEST(FolioFile, anEmptyFolioAndOddTextsToo) {
    const ScratchFolder folder;
    Folio folio;
    folio.id = "x";
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    EXPECT_EQ(*readFolio(folder / "a"), folio);
    folio.client = std::string("Zerbinetta\0'; DROP TABLE folio; --", 34) + "\xF0\x9F\xA9\xB0";
    folio.note = "\n\t\"";
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    EXPECT_EQ(*readFolio(folder / "a"), folio);
}

TEST(FolioFile, sameFolioSameBytes) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "b"));
    EXPECT_EQ(bytesIn(folder / "a"), bytesIn(folder / "b"));
}

// The numbers other programs know the file by: https://www.sqlite.org/fileformat2.html, header
// offsets 0, 60 and 68.
TEST(FolioFile, headerSaysWhatItIs) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    const std::string bytes = bytesIn(folder / "a");
    EXPECT_EQ(bytes.substr(0, 16), std::string("SQLite format 3\0", 16));
    EXPECT_EQ(bytes.substr(60, 4), std::string("\0\0\0\3", 4));
    EXPECT_EQ(bytes.substr(68, 4), "Cout");
}

TEST(FolioFile, foreignFilesAreRefused) {
    const ScratchFolder folder;
    EXPECT_EQ(verdictOn(folder / "none"), "file_missing");
    EXPECT_EQ(verdictUnchanged(folder, folder.path()), "file_unreadable");
    EXPECT_EQ(verdictUnchanged(folder, "/dev/null"), "file_unreadable");
    putBytes(folder / "empty", "");
    EXPECT_EQ(verdictUnchanged(folder, folder / "empty"), "file_foreign");
    putBytes(folder / "text", "{\"coutil\":\"measurements\"}");
    EXPECT_EQ(verdictUnchanged(folder, folder / "text"), "file_foreign");
    runSql(folder / "other", "CREATE TABLE folio (one)");
    EXPECT_EQ(verdictUnchanged(folder, folder / "other"), "file_foreign");
    putBytes(folder / "locked", "x");
    fs::permissions(folder / "locked", fs::perms::none);
    fs::permissions(folder.path(), fs::perms(0755));
    EXPECT_EQ(
        asOrdinaryUser([&] { return verdictOn(folder / "locked") == "file_unreadable" ? 0 : 1; }),
        0);
}

TEST(FolioFile, newerFileIsRefusedWithBothVersions) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    runSql(folder / "a", "PRAGMA user_version = 7");
    EXPECT_EQ(verdictUnchanged(folder, folder / "a"), "file_newer");
    const Problem problem = readFolio(folder / "a").problems.front();
    EXPECT_EQ(problem.figures,
              (std::vector<Figure>{{"file", 7, FigureUnit::count},
                                   {"program", kFolioSchemaVersion, FigureUnit::count}}));
}

TEST(FolioFile, changedOutsideOrIncompleteIsDamaged) {
    const ScratchFolder folder;
    for (const char* sql :
         {"DROP TABLE reading", "DROP TRIGGER revision_never_updated",
          "DROP TRIGGER revision_never_deleted; CREATE TRIGGER revision_never_deleted BEFORE "
          "DELETE "
          "ON revision BEGIN SELECT 1; END",
          "UPDATE fitting SET read_by = 'no one'", "UPDATE photo_bytes SET jpeg = x'00'",
          "DELETE FROM photo_bytes", "UPDATE photo SET width_px = 2",
          "UPDATE set_aside SET reason = ''", "DROP TABLE seal", "DELETE FROM folio",
          "DELETE FROM pencil",
          "UPDATE reading SET value_mm = value_mm + 1 WHERE name = 'waist_girth'",
          "UPDATE garment SET place = 1 - place + 10", "PRAGMA user_version = 0",
          "UPDATE folio SET client = 'another'", "UPDATE seal SET digest = ''",
          "DROP TABLE folio; CREATE VIEW folio AS SELECT 1 AS one, 'a' AS id, 'b' AS client, 'c' "
          "AS note, 'mm' AS unit"}) {
        ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
        runSql(folder / "a", sql);
        EXPECT_EQ(verdictUnchanged(folder, folder / "a"), "file_damaged") << sql;
    }
}

TEST(FolioFile, everyTruncationIsDamaged) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    const std::string whole = bytesIn(folder / "a");
    for (std::size_t size = 16; size < whole.size(); size += 997) {
        putBytes(folder / "a", whole.substr(0, size));
        EXPECT_EQ(verdictUnchanged(folder, folder / "a"), "file_damaged") << size;
    }
    putBytes(folder / "a", whole + whole.substr(0, 4096));
    EXPECT_EQ(verdictUnchanged(folder, folder / "a"), "file_damaged");
}

// A flipped bit anywhere: refused, or (in bytes that mean nothing, such as free space) the very
// same folio. Never another one.
TEST(FolioFile, flippedBitsNeverGiveAnotherFolio) {
    const Folio folio = sampleFolio();
    const std::string whole = *folioImage(folio, "a").value;
    std::minstd_rand random(3);
    int refused = 0;
    constexpr int kRounds = 2000;
    for (int round = 0; round < kRounds; ++round) {
        std::string flipped = whole;
        // Half of the flips where the values are: bytes that are not zero.
        std::size_t at = random() % whole.size();
        while (round % 2 == 0 && whole[at] == '\0') at = random() % whole.size();
        flipped[at] = static_cast<char>(flipped[at] ^ (1 << (random() % 8)));
        const Outcome<Folio> outcome = folioFromImage(flipped, "a");
        if (outcome) {
            ASSERT_EQ(*outcome, folio) << "bit flipped in byte " << at;
        } else {
            ASSERT_FALSE(outcome.problems.empty());
            ++refused;
        }
    }
    EXPECT_GT(refused, kRounds / 3);
}

TEST(FolioFile, aFlippedBitChangesNoFile) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    std::string bytes = bytesIn(folder / "a");
    const std::size_t at = bytes.find("second cast");
    ASSERT_NE(at, std::string::npos);
    bytes[at] = 'S';
    putBytes(folder / "a", bytes);
    EXPECT_EQ(verdictUnchanged(folder, folder / "a"), "file_damaged");
}

TEST(FolioFile, tooLargeAPhotoIsRefused) {
    const ScratchFolder folder;
    Folio folio = sampleFolio();
    folio.photos.emplace_back(Photo{.id = "large",
                                    .caption = "a wall",
                                    .addedOn = {},
                                    .jpeg = std::string(kLargestPhotoBytes + 1, 'j')});
    const auto problem = writeFolio(folio, folder / "a");
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->code, ProblemCode::photoTooLarge);
    EXPECT_EQ(problem->subject, "a wall");
    EXPECT_EQ(folder.entryCount(), 0U);
}

TEST(FolioFile, whatCannotBeWrittenChangesNothing) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(0), folder / "a"));
    const FileState before = stateOf(folder / "a");
    Folio twice = sampleFolio(1);
    twice.garments[1].id = twice.garments[0].id;
    EXPECT_EQ(writeFolio(twice, folder / "a")->code, ProblemCode::fileUnwritable);
    EXPECT_EQ(inChild([&] {
                  ::signal(SIGXFSZ, SIG_IGN);
                  const rlimit limit{8'000, 8'000};
                  if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return 2;
                  const auto full = writeFolio(sampleFolio(1), folder / "a");
                  return full && full->code == ProblemCode::diskFull ? 0 : 1;
              }),
              0);
    EXPECT_EQ(stateOf(folder / "a"), before);
    EXPECT_EQ(folder.entryCount(), 1U);
}

// Killed 80 times at random moments of saving: opens as one of the two states, every time.
TEST(FolioFile, killedWhileSavingOpensAsOldOrNew) {
    const ScratchFolder folder;
    const Folio one = sampleFolio(1);
    const Folio two = sampleFolio(2);
    const auto saveBoth = [&] {
        (void)writeFolio(two, folder / "a");
        (void)writeFolio(one, folder / "a");
    };
    const unsigned long both = microsecondsOf(saveBoth);
    std::minstd_rand random(11);
    int changes = 0;
    for (int round = 0; round < 80; ++round) {
        const std::string before = bytesIn(folder / "a");
        killedAfter(random() % (2 * both), saveBoth);
        const Outcome<Folio> now = readFolio(folder / "a");
        ASSERT_TRUE(now) << "round " << round;
        ASSERT_TRUE(*now == one || *now == two);
        if (bytesIn(folder / "a") != before) ++changes;
    }
    EXPECT_GT(changes, 5) << both << " us a pair: the child was killed before it could do anything";
}

// A window that was opened before another one confirmed.
TEST(FolioFile, aRevisionConfirmedElsewhereIsNeverWrittenOver) {
    const ScratchFolder folder;
    const fs::path file = folder / "a.coutil";
    ASSERT_FALSE(writeFolio(sampleFolio(), file));
    Folio stale = sampleFolio(1);
    stale.garments[0].revisions.pop_back();
    const FileState before = stateOf(file);
    const auto problem = writeFolio(stale, file);
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->code, ProblemCode::fileUnwritable);
    EXPECT_EQ(problem->subject, file.string());
    EXPECT_EQ(problem->detail, stale.garments[0].name);
    ASSERT_EQ(problem->figures.size(), 1U);
    EXPECT_EQ(problem->figures[0].name, "revision");
    EXPECT_EQ(problem->figures[0].value, sampleFolio().garments[0].revisions.back()->number());
    EXPECT_EQ(stateOf(file), before);
    EXPECT_EQ(folder.entryCount(), 1U);
    EXPECT_FALSE(writeFolio(stale, folder / "b.coutil")) << "beside it both are kept";
    EXPECT_EQ(*readFolio(folder / "b.coutil"), stale);
}

TEST(FolioFile, noFolioOfAnotherClientIsWrittenOverWhereItHasRevisions) {
    const ScratchFolder folder;
    const fs::path file = folder / "a.coutil";
    ASSERT_FALSE(writeFolio(sampleFolio(), file));
    EXPECT_TRUE(writeFolio(sampleBlocks(), file));
    EXPECT_EQ(*readFolio(file), sampleFolio());
    ASSERT_FALSE(writeFolio(sampleBlocks(), folder / "b.coutil"));
    EXPECT_FALSE(writeFolio(sampleFolio(), folder / "b.coutil")) << "nothing confirmed was there";
}

}  // namespace
