#include "core/store/folio_file/sound_folio.h"

#include <utility>

#include <SQLiteCpp/Database.h>

#include "core/store/folio_file.h"
#include "core/store/folio_file/folio_rows.h"
#include "core/store/folio_file/folio_schema.h"
#include "core/store/folio_file/folio_seal.h"
#include "core/store/folio_file/folio_upgrade.h"

namespace coutil {

Outcome<Folio> soundFolio(SQLite::Database& database, const std::filesystem::path& file) {
    Problem damaged;
    damaged.code = ProblemCode::fileDamaged;
    damaged.subject = file.string();
    if (!upgradeFolio(database, folioUpgrades(), kFolioSchemaVersion)) return damaged;
    if (!hasFolioTables(database)) return damaged;
    // Before the seal, which would only say that something is wrong.
    Outcome<RevisionsByGarment> revisions = revisionsFromRows(database);
    if (!revisions && revisions.problems.front().code == ProblemCode::fileDamaged) return damaged;
    if (!revisions) return Outcome<Folio>::failed(std::move(revisions.problems));
    if (!isSealSound(database)) return damaged;
    if (auto folio = folioFromRows(database, *std::move(revisions.value))) return *std::move(folio);
    return damaged;
}

}  // namespace coutil
