#pragma once

#include <span>

namespace SQLite {
class Database;
}

namespace coutil {

// One step of the chain: from schema `from` to `from` + 1. It throws SQLite::Exception where the
// file is not what its schema number says.
struct FolioUpgrade {
    int from = 0;
    void (*apply)(SQLite::Database& database) = nullptr;
};

// The steps this program knows, oldest first. Schema 1 is the first that left the house.
[[nodiscard]] std::span<const FolioUpgrade> folioUpgrades();

// Brings a database (a copy in memory, never the maker's file) from its schema to `target`, one
// step after the other in one transaction. False when a step is missing or the seal does
// not fit what is there. Throws SQLite::Exception.
[[nodiscard]] bool upgradeFolio(SQLite::Database& database, std::span<const FolioUpgrade> steps,
                                int target);

}  // namespace coutil
