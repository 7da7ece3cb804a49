#include "core/store/folio_file/folio_upgrade.h"

#include <array>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <gtest/gtest.h>

#include "core/store/folio_file/folio_seal.h"

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

}  // namespace
