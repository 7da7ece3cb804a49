// What is confirmed stays: the database refuses to change it, and a change made all the same is
// found on opening and named.
#include <algorithm>
#include <filesystem>
#include <map>

#include <gtest/gtest.h>
#include <sqlite3.h>

#include "core/revision/ink.h"
#include "core/store/folio_file.h"
#include "core/store/folio_file/folio_image.h"
#include "core/store/folio_file/folio_schema.h"
#include "core/store/text_formats.h"
#include "core/store/working_copy.h"
#include "tests/core/store/file_state.h"
#include "tests/core/store/sample_folio.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;
using namespace coutil::test;
namespace fs = std::filesystem;

// The SQLite library itself, as another program would use it.
class Database {
  public:
    explicit Database(const fs::path& file) {
        EXPECT_EQ(sqlite3_open(file.c_str(), &database_), SQLITE_OK);
        sqlite3_busy_timeout(database_, 2000);
    }
    ~Database() { sqlite3_close(database_); }
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    int run(const std::string& sql) {
        return sqlite3_exec(database_, sql.c_str(), nullptr, nullptr, nullptr);
    }
    std::string message() { return sqlite3_errmsg(database_); }
    int changes() { return sqlite3_total_changes(database_); }
    std::string only(const std::string& sql) {
        sqlite3_stmt* row = nullptr;
        EXPECT_EQ(sqlite3_prepare_v2(database_, sql.c_str(), -1, &row, nullptr), SQLITE_OK) << sql;
        std::string text;
        if (sqlite3_step(row) == SQLITE_ROW)
            text = reinterpret_cast<const char*>(sqlite3_column_text(row, 0));
        sqlite3_finalize(row);
        return text;
    }

  private:
    sqlite3* database_ = nullptr;
};

// Past the guards and with them put back, as only someone who means it does.
void forced(const fs::path& file, const std::string& sql) {
    Database database(file);
    for (const FolioTrigger& trigger : folioTriggers())
        ASSERT_EQ(database.run("DROP TRIGGER " + std::string(trigger.name)), SQLITE_OK);
    ASSERT_EQ(database.run(sql), SQLITE_OK) << sql << ": " << database.message();
    for (const FolioTrigger& trigger : folioTriggers())
        ASSERT_EQ(database.run(std::string(trigger.create)), SQLITE_OK);
}

std::vector<std::string> attacksOn(const std::string& digest, const std::string& garment) {
    const std::string where = " WHERE digest = '" + digest + "'";
    const std::string values =
        "INTO revision VALUES ('" + digest + "', 'g', 7, '', '', '', '', '', '', '')";
    const std::string sameNumber =
        "INTO revision VALUES ('new', '" + garment + "', 1, '', '', '', '', '', '', '')";
    return {"UPDATE revision SET note = 'better'" + where,
            "UPDATE OR REPLACE revision SET ink = ''" + where,
            "UPDATE revision SET digest = 'x'" + where,
            "UPDATE OR IGNORE revision SET number = 9" + where,
            "UPDATE revision SET note = note",
            "DELETE FROM revision" + where,
            "DELETE FROM revision",
            "INSERT OR REPLACE " + values,
            "REPLACE " + values,
            "REPLACE " + sameNumber,
            "INSERT OR REPLACE " + sameNumber,
            "INSERT " + values,
            "INSERT " + values + " ON CONFLICT (digest) DO UPDATE SET note = 'better'",
            "INSERT " + sameNumber + " ON CONFLICT (garment, number) DO UPDATE SET ink = ''"};
}

void expectAllRefused(const fs::path& file, const Folio& folio) {
    Database database(file);
    const std::string digest = folio.garments[0].revisions[0]->digest();
    const std::string all =
        "SELECT group_concat(digest || garment || number || note || ink) FROM revision";
    const std::string before = database.only(all);
    for (const char* recursive : {"OFF", "ON"}) {
        ASSERT_EQ(database.run(std::string("PRAGMA recursive_triggers = ") + recursive), SQLITE_OK);
        for (const std::string& sql : attacksOn(digest, folio.garments[0].id)) {
            EXPECT_EQ(database.run(sql), SQLITE_CONSTRAINT) << sql;
            EXPECT_NE(database.message().find("a confirmed revision"), std::string::npos) << sql;
        }
    }
    EXPECT_EQ(database.only(all), before);
    EXPECT_EQ(database.changes(), 0);
}

TEST(Confirmed, theFileItselfRefusesEveryChange) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    expectAllRefused(folder / "a", sampleFolio());
    EXPECT_EQ(*readFolio(folder / "a"), sampleFolio());
}

TEST(Confirmed, theWorkingCopyRefusesEveryChange) {
    const ScratchFolder folder;
    auto copy = *WorkingCopy::begin(folder / "state", sampleFolio(), "");
    for (const auto& entry : fs::directory_iterator(folder / "state"))
        if (entry.path().extension() == ".working") expectAllRefused(entry.path(), sampleFolio());
    ASSERT_FALSE(copy->record(sampleFolio(1), "2026-05-01T10:00:00Z"));
    copy.reset();
    const auto left = recoverableIn(folder / "state");
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(*recoveredFolio(left[0]), sampleFolio(1));
}

TEST(Confirmed, theWorkingCopyTakesNoFolioWithoutThem) {
    const ScratchFolder folder;
    auto copy = *WorkingCopy::begin(folder / "state", sampleFolio(), "");
    Folio fewer = sampleFolio(1);
    fewer.garments[0].revisions.pop_back();
    const auto refused = copy->record(fewer, "2026-05-01T10:00:00Z");
    ASSERT_TRUE(refused);
    EXPECT_EQ(refused->code, ProblemCode::fileUnwritable);
    copy.reset();
    EXPECT_EQ(*recoveredFolio(recoverableIn(folder / "state").at(0)), sampleFolio());
}

TEST(Confirmed, savingAgainOnlyAdds) {
    const ScratchFolder folder;
    Folio folio = sampleFolio();
    const auto last = folio.garments[0].revisions.back();
    folio.garments[0].revisions.pop_back();
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    const std::string row =
        "SELECT digest || number || note || recipe || ink FROM revision WHERE digest = '" +
        folio.garments[0].revisions[0]->digest() + "'";
    const std::string before = Database(folder / "a").only(row);
    EXPECT_GT(before.size(), 2000U);
    folio = sampleFolio(1);
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    EXPECT_EQ(Database(folder / "a").only(row), before);
    EXPECT_EQ(readFolio(folder / "a")->garments[0].revisions.back()->digest(), last->digest());
}

// Every column of every row. Where the garment or the number was changed the name is the changed
// one: what stands there is all that is known.
TEST(Confirmed, aChangeOfAnyColumnIsFoundAndNamed) {
    const ScratchFolder folder;
    const Folio folio = sampleFolio();
    const std::map<std::string, std::string> changes{
        {"digest", "'0' || substr(digest, 2) || '0'"},
        {"garment", "garment || 'x'"},
        {"number", "number + 10"},
        {"parent", "parent || '0'"},
        {"confirmed_on", "'2026-01-01'"},
        {"confirmed_by", "confirmed_by || ' '"},
        {"note", "replace(note, 'hip', 'bust')"},
        {"errors_accepted", "''"},
        {"recipe", "replace(recipe, '\"cm\"', '\"in\"') || ' '"},
        {"ink", "replace(ink, '130000', '130001') || char(10)"}};
    for (const Garment& garment : folio.garments) {
        for (const Shared<Revision>& revision : garment.revisions) {
            for (const auto& [column, value] : changes) {
                std::filesystem::remove(folder / "a");  // no save goes over a revision it lacks
                ASSERT_FALSE(writeFolio(folio, folder / "a"));
                forced(folder / "a", "UPDATE revision SET " + column + " = " + value +
                                         " WHERE digest = '" + revision->digest() + "'");
                const auto read = readFolio(folder / "a");
                ASSERT_FALSE(read) << column;
                ASSERT_EQ(read.problems.size(), 1U) << column;
                const Problem& problem = read.problems[0];
                EXPECT_EQ(problem.code, ProblemCode::revisionTampered) << column;
                EXPECT_EQ(problem.subject,
                          std::to_string(revision->number() + (column == "number" ? 10 : 0)));
                EXPECT_EQ(problem.detail, column == "garment" ? garment.id + "x" : garment.name);
            }
        }
    }
}

TEST(Confirmed, everyChangedRevisionIsNamed) {
    const ScratchFolder folder;
    ASSERT_FALSE(writeFolio(sampleFolio(), folder / "a"));
    forced(folder / "a", "UPDATE revision SET note = 'better' WHERE number < 3");
    std::vector<std::string> named;
    for (const Problem& problem : readFolio(folder / "a").problems)
        named.push_back(problem.detail + " " + problem.subject);
    EXPECT_EQ(named, (std::vector<std::string>{"act one 1", "act one 2", "act two 1"}));
}

TEST(Confirmed, aRevisionTakenAwayIsMissed) {
    const ScratchFolder folder;
    const Folio folio = sampleFolio();
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    const auto& revisions = folio.garments[0].revisions;
    forced(folder / "a", "DELETE FROM revision WHERE digest = '" + revisions[1]->digest() + "'");
    const auto child = readFolio(folder / "a");
    ASSERT_EQ(child.problems.size(), 1U);
    EXPECT_EQ(child.problems[0].code, ProblemCode::revisionParentMissing);
    EXPECT_EQ(child.problems[0].subject, "1");
    EXPECT_EQ(child.problems[0].detail, "act two");
    // The last one has no child that could miss it; the seal does.
    ASSERT_FALSE(writeFolio(folio, folder / "a"));
    forced(folder / "a", "DELETE FROM revision WHERE digest = '" + revisions[2]->digest() + "'");
    EXPECT_EQ(readFolio(folder / "a").problems.at(0).code, ProblemCode::fileDamaged);
}

// Someone who computes a new digest for what she changed is found by the child that names the old.
TEST(Confirmed, aNewDigestIsMissedByTheChild) {
    const ScratchFolder folder;
    Folio folio = sampleFolio();
    auto& revisions = folio.garments[0].revisions;
    RevisionContent content = revisions[0]->content();
    content.note = "never was";
    std::string recipe = revisions[0]->recipeText();
    revisions[0] = inkOver(content, recipe);
    const auto problem = writeFolio(folio, folder / "a");
    ASSERT_TRUE(problem);
    EXPECT_EQ(folder.entryCount(), 0U);
    const auto image = folioImage(folio, "a");
    const auto read = folioFromImage(*image, "a");
    ASSERT_EQ(read.problems.size(), 2U);
    EXPECT_EQ(read.problems[0].code, ProblemCode::revisionParentMissing);
}

// A folio with one small revision, so that every byte of it can be tried.
Folio smallFolio() {
    Folio folio = sampleBlocks();
    folio.measurementSets.clear();
    folio.garments.pop_back();
    folio.garments[0].pencils.clear();
    RevisionContent content = sampleFolio().garments[0].revisions[0]->content();
    content.recipe = {};
    std::string recipe = writeRecipeJson(content.recipe);
    folio.garments[0].revisions = {inkOver(std::move(content), std::move(recipe))};
    return folio;
}

// The bytes of the image that are bytes of confirmed content; long texts lie in several runs.
std::vector<bool> confirmedBytesOf(const std::string& image, const Revision& revision) {
    constexpr std::size_t kRun = 24;
    std::vector<bool> isConfirmed(image.size(), false);
    const auto markAll = [&](std::string_view run) {
        for (std::size_t at = image.find(run); at != std::string::npos;
             at = image.find(run, at + 1))
            std::fill_n(isConfirmed.begin() + static_cast<std::ptrdiff_t>(at), run.size(), true);
    };
    const RevisionContent& content = revision.content();
    for (const std::string_view text :
         {std::string_view(content.note), std::string_view(content.errorsAccepted),
          std::string_view(revision.recipeText()), std::string_view(revision.inkText())})
        for (std::size_t i = 0; i < text.size(); ++i)
            if (text.substr(i).size() >= kRun || i == 0) markAll(text.substr(i, kRun));
    return isConfirmed;
}

TEST(Confirmed, aChangeOfAnyByteIsFound) {
    const Folio folio = smallFolio();
    const Revision& revision = *folio.garments[0].revisions[0];
    const std::string image = *folioImage(folio, "a").value;
    const std::vector<bool> isConfirmed = confirmedBytesOf(image, revision);
    const auto confirmed = std::ranges::count(isConfirmed, true);
    EXPECT_GE(static_cast<std::size_t>(confirmed),
              revision.recipeText().size() + revision.inkText().size());
    std::size_t named = 0;
    for (std::size_t at = 0; at < image.size(); ++at) {
        if (!isConfirmed[at] && (image[at] == '\0' ? at % 97 != 0 : at % 5 != 0)) continue;
        std::string changed = image;
        changed[at] = static_cast<char>(changed[at] ^ (1 << (at % 8)));
        const auto read = folioFromImage(changed, "a");
        if (read) {
            ASSERT_FALSE(isConfirmed[at]) << at;
            ASSERT_EQ(*read, folio) << at;
            ASSERT_EQ(read->garments[0].revisions[0]->content(), revision.content()) << at;
        } else if (isConfirmed[at]) {
            ASSERT_EQ(read.problems.at(0).code, ProblemCode::revisionTampered) << at;
            EXPECT_EQ(read.problems[0].subject, "1");
            EXPECT_EQ(read.problems[0].detail, "act one");
            ++named;
        }
    }
    EXPECT_EQ(named, static_cast<std::size_t>(confirmed));
}

}  // namespace
