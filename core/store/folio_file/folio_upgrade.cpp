#include "core/store/folio_file/folio_upgrade.h"

#include <algorithm>
#include <array>
#include <string>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include "core/store/folio_file/folio_schema.h"
#include "core/store/folio_file/folio_seal.h"
#include "core/store/making_up_formats.h"
#include "core/store/text_formats.h"

namespace coutil {
namespace {

constexpr std::string_view kMakingUp = "making_up";

// Schema 1 had one pencil a garment, always a block, and nothing confirmed. Schema 2 is the one of
// folio_schema.cpp without the choices of making-up.
void fromOneToTwo(SQLite::Database& database) {
    database.exec("ALTER TABLE pencil RENAME TO pencil_of_one");
    for (const FolioTable& table : folioTables()) {
        if (table.name != kMakingUp && !database.tableExists(std::string(table.name)))
            database.exec(std::string(table.create));
    }
    SQLite::Statement put(database,
                          "INSERT INTO pencil SELECT garment, id, 0, started_on, measurement_set, "
                          "style, '', '', ? FROM pencil_of_one");
    put.bind(1, writeAlterationsJson({}));
    put.exec();
    database.exec("DROP TABLE pencil_of_one");
    for (const FolioTrigger& trigger : folioTriggers()) database.exec(std::string(trigger.create));
}

// Schema 3 keeps how a garment is made up and traced: as usual, until the maker says otherwise.
void fromTwoToThree(SQLite::Database& database) {
    const auto table = std::ranges::find(folioTables(), kMakingUp, &FolioTable::name);
    database.exec(std::string(table->create));
    SQLite::Statement put(database, "INSERT INTO making_up SELECT id, ?, ? FROM garment");
    put.bind(1, writeMakingUpJson({}));
    put.bind(2, writeTracingChoicesJson({}));
    put.exec();
}

constexpr std::array kUpgrades{FolioUpgrade{1, fromOneToTwo}, FolioUpgrade{2, fromTwoToThree}};

}  // namespace

std::span<const FolioUpgrade> folioUpgrades() { return kUpgrades; }

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
