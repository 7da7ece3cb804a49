#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace SQLite {
class Database;
}

namespace coutil {

// The revisions of each garment (by its id), in the order of their numbers.
using RevisionsByGarment = std::map<std::string, std::vector<Shared<Revision>>>;

// Adds the revisions of the folio that are not in the table yet. Throws SQLite::Exception, also
// where the table holds one that the folio has not.
void putRevisionRows(SQLite::Database& database, const Folio& folio);

// Every revision, read against its digest. Problems, one a revision: revisionTampered; when there
// is none of these, revisionParentMissing (subject: its number, detail: the garment's name);
// fileDamaged without a subject where a recipe can't be read. Throws SQLite::Exception.
[[nodiscard]] Outcome<RevisionsByGarment> revisionsFromRows(SQLite::Database& database);

}  // namespace coutil
