#include "core/store/folio_file/revision_rows.h"

#include <algorithm>
#include <limits>
#include <set>
#include <utility>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include "core/revision/ink.h"
#include "core/store/folio_file/recipe_reader.h"

namespace coutil {
namespace {

std::set<std::string> digestsIn(SQLite::Database& database) {
    std::set<std::string> digests;
    SQLite::Statement rows(database, "SELECT digest FROM revision");
    while (rows.executeStep()) digests.insert(rows.getColumn(0).getString());
    return digests;
}

void putRevision(SQLite::Statement& put, const Revision& revision) {
    const RevisionContent& content = revision.content();
    put.bind(1, revision.digest());
    put.bind(2, content.garment);
    put.bind(3, content.number);
    put.bind(4, content.parent);
    put.bind(5, content.confirmedOn);
    put.bind(6, content.confirmedBy);
    put.bind(7, content.note);
    put.bind(8, content.errorsAccepted);
    put.bind(9, revision.recipeText());
    put.bind(10, revision.inkText());
    put.exec();
    put.reset();
}

Problem problemOf(ProblemCode code, SQLite::Database& database, const std::string& number,
                  const std::string& garment) {
    SQLite::Statement find(database, "SELECT name FROM garment WHERE id = ?");
    find.bind(1, garment);
    Problem problem;
    problem.code = code;
    problem.subject = number;
    problem.detail = find.executeStep() ? find.getColumn(0).getString() : garment;
    return problem;
}

// What a row says, without recipe and outlines; nothing where no number of ours stands there.
std::optional<RevisionContent> headOf(SQLite::Statement& row) {
    const std::int64_t number = row.getColumn(2).getInt64();
    if (number < 1 || number > std::numeric_limits<int>::max()) return std::nullopt;
    RevisionContent content;
    content.garment = row.getColumn(1).getString();
    content.number = static_cast<int>(number);
    content.parent = row.getColumn(3).getString();
    content.confirmedOn = row.getColumn(4).getString();
    content.confirmedBy = row.getColumn(5).getString();
    content.note = row.getColumn(6).getString();
    content.errorsAccepted = row.getColumn(7).getString();
    return content;
}

// A recipe that can't be read counts as damage only where the digest fits.
Outcome<Revision> revisionOf(SQLite::Statement& row, RecipeReader& recipes) {
    std::optional<RevisionContent> content = headOf(row);
    if (!content) {
        Problem tampered;
        tampered.code = ProblemCode::revisionTampered;
        return tampered;
    }
    std::string recipeText = row.getColumn(8).getString();
    std::optional<Recipe> recipe = recipes.read(recipeText);
    if (recipe) content->recipe = *recipe;
    Outcome<Revision> revision =
        inkRead(*std::move(content), std::move(recipeText), row.getColumn(9).getString(),
                row.getColumn(0).getString());
    if (revision && !recipe) {
        Problem damaged;
        damaged.code = ProblemCode::fileDamaged;
        return damaged;
    }
    return revision;
}

std::vector<Problem> missingParents(SQLite::Database& database, const RevisionsByGarment& all) {
    const std::set<std::string> digests = digestsIn(database);
    std::vector<Problem> missing;
    for (const auto& [garment, revisions] : all) {
        for (const Shared<Revision>& revision : revisions) {
            if (const std::string& parent = revision->content().parent;
                !parent.empty() && !digests.contains(parent)) {
                missing.push_back(problemOf(ProblemCode::revisionParentMissing, database,
                                            std::to_string(revision->number()), garment));
            }
        }
    }
    return missing;
}

}  // namespace

void putRevisionRows(SQLite::Database& database, const Folio& folio) {
    std::set<std::string> there = digestsIn(database);
    SQLite::Statement put(database, "INSERT INTO revision VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    for (const Garment& garment : folio.garments) {
        for (const Shared<Revision>& revision : garment.revisions)
            if (there.erase(revision->digest()) == 0) putRevision(put, *revision);
    }
    if (!there.empty())
        throw SQLite::Exception("a confirmed revision would be lost", SQLITE_CONSTRAINT);
}

Outcome<RevisionsByGarment> revisionsFromRows(SQLite::Database& database) {
    RevisionsByGarment all;
    RecipeReader recipes;
    std::vector<Problem> problems;
    SQLite::Statement row(database,
                          "SELECT digest, garment, number, parent, confirmed_on, confirmed_by, "
                          "note, errors_accepted, recipe, ink FROM revision "
                          "ORDER BY garment, number");
    while (row.executeStep()) {
        Outcome<Revision> revision = revisionOf(row, recipes);
        if (revision) {
            all[revision->content().garment].emplace_back(std::move(*revision));
        } else if (revision.problems.front().code == ProblemCode::revisionTampered) {
            problems.push_back(problemOf(ProblemCode::revisionTampered, database,
                                         row.getColumn(2).getString(),
                                         row.getColumn(1).getString()));
        } else {
            return Outcome<RevisionsByGarment>::failed(std::move(revision.problems));
        }
    }
    if (problems.empty()) problems = missingParents(database, all);
    if (!problems.empty()) return Outcome<RevisionsByGarment>::failed(std::move(problems));
    return all;
}

}  // namespace coutil
