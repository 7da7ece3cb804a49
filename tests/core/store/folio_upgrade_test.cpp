#include "core/store/folio_file/folio_upgrade.h"

#include <array>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <gtest/gtest.h>

#include "core/store/folio_file.h"
#include "core/store/folio_file/folio_image.h"
#include "core/store/folio_file/folio_seal.h"
#include "tests/core/store/file_state.h"
#include "tests/core/store/sample_folio.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;

// A chain of the test's own: schema 1 has garments, 2 gives them a colour, 3 splits the name off.
constexpr std::array kChain{
    FolioUpgrade{1,
                 [](SQLite::Database& database) {
                     database.exec("ALTER TABLE garment ADD COLUMN colour TEXT DEFAULT 'white'");
                 }},
    FolioUpgrade{2, [](SQLite::Database& database) {
                     database.exec("CREATE TABLE named (garment TEXT, name TEXT)");
                     database.exec("INSERT INTO named SELECT id, name FROM garment");
                     database.exec("ALTER TABLE garment DROP COLUMN name");
                 }}};

SQLite::Database schemaOne() {
    SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA user_version = 1");
    database.exec("CREATE TABLE garment (id TEXT PRIMARY KEY, name TEXT) STRICT");
    database.exec(
        "CREATE TABLE seal (one INTEGER PRIMARY KEY CHECK (one = 1), digest TEXT) STRICT");
    database.exec("INSERT INTO garment VALUES ('a', 'act one')");
    putSeal(database);
    return database;
}

TEST(FolioUpgrade, walksTheChainStepByStep) {
    SQLite::Database database = schemaOne();
    ASSERT_TRUE(upgradeFolio(database, kChain, 3));
    EXPECT_EQ(database.execAndGet("PRAGMA user_version").getInt(), 3);
    EXPECT_EQ(database.execAndGet("SELECT name FROM named").getString(), "act one");
    EXPECT_EQ(database.execAndGet("SELECT colour FROM garment").getString(), "white");
    EXPECT_TRUE(isSealSound(database));
}

TEST(FolioUpgrade, aMissingStepOrABrokenSealLeavesTheOldSchema) {
    SQLite::Database database = schemaOne();
    EXPECT_FALSE(upgradeFolio(database, kChain, 4));
    EXPECT_EQ(database.execAndGet("PRAGMA user_version").getInt(), 1);
    EXPECT_EQ(database.execAndGet("SELECT name FROM garment").getString(), "act one");
    database.exec("UPDATE garment SET name = 'act two'");
    EXPECT_FALSE(upgradeFolio(database, kChain, 3));
    EXPECT_EQ(database.execAndGet("PRAGMA user_version").getInt(), 1);
}

TEST(FolioUpgrade, theProgramsOwnChainHasNoHole) {
    int version = 1;
    for (const FolioUpgrade& step : folioUpgrades()) EXPECT_EQ(step.from, version++);
}

// A file that version 1 of the schema's own program wrote (tests/data/folios/README.md).
TEST(FolioUpgrade, aFileOfSchemaOneOpensWithEveryValue) {
    const auto read = readFolio(COUTIL_TEST_DATA "/folios/schema_1.coutil");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, test::sampleBlocks());
    EXPECT_TRUE(read.problems.empty());
}

TEST(FolioUpgrade, aFileOfSchemaOneIsSavedAsTodays) {
    const test::ScratchFolder folder;
    Folio folio = *readFolio(COUTIL_TEST_DATA "/folios/schema_1.coutil");
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    ASSERT_FALSE(writeFolio(test::sampleBlocks(), folder / "b"));
    EXPECT_EQ(test::bytesIn(folder / "a"), test::bytesIn(folder / "b"));
}

TEST(FolioUpgrade, aFileOfSchemaTwoOpensWithEveryValue) {
    const auto read = readFolio(COUTIL_TEST_DATA "/folios/schema_2.coutil");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, test::sampleHistory());
    EXPECT_EQ(read->garments[0].makingUp, MakingUpChoices{});
    EXPECT_EQ(read->garments[0].tracing, TracingChoices{});
    EXPECT_TRUE(read.problems.empty());
}

TEST(FolioUpgrade, aFileOfSchemaTwoIsSavedAsTodays) {
    const test::ScratchFolder folder;
    ASSERT_FALSE(writeFolio(*readFolio(COUTIL_TEST_DATA "/folios/schema_2.coutil"), folder / "a"));
    ASSERT_FALSE(writeFolio(test::sampleHistory(), folder / "b"));
    EXPECT_EQ(test::bytesIn(folder / "a"), test::bytesIn(folder / "b"));
}

TEST(FolioUpgrade, damageInAFileOfSchemaOneIsNotUpgradedAway) {
    std::string bytes = test::bytesIn(COUTIL_TEST_DATA "/folios/schema_1.coutil");
    bytes[bytes.find("act one")] = 'A';
    const auto read = folioFromImage(bytes, "old");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.problems.front().code, ProblemCode::fileDamaged);
}

}  // namespace
