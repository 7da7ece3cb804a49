#include "core/store/folio_file/folio_upgrade.h"

#include <algorithm>
#include <string>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>

#include "core/store/folio_file/folio_seal.h"

namespace coutil {

std::span<const FolioUpgrade> folioUpgrades() { return {}; }

bool upgradeFolio(SQLite::Database& database, std::span<const FolioUpgrade> steps, int target) {
    int version = database.execAndGet("PRAGMA user_version").getInt();
    if (version == target) return true;
    if (!isSealSound(database)) return false;  // or the new seal would hide the damage
    SQLite::Transaction all(database);
    for (; version < target; ++version) {
        const auto step = std::ranges::find(steps, version, &FolioUpgrade::from);
        if (step == steps.end()) return false;
        step->apply(database);
    }
    database.exec("PRAGMA user_version = " + std::to_string(target));
    putSeal(database);
    all.commit();
    return true;
}

}  // namespace coutil
