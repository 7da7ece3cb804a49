#include "core/store/folio_file/folio_seal.h"

#include <bit>
#include <cstdint>
#include <vector>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/uuid.h"

namespace coutil {
namespace {

void appendNumber(std::string& bytes, std::uint64_t number) {
    for (int shift = 0; shift < 64; shift += 8)
        bytes.push_back(static_cast<char>(static_cast<unsigned char>(number >> shift)));
}

// Kind, then the value; texts with their length before them, so that no two contents read alike.
void appendValue(std::string& bytes, const SQLite::Column& column) {
    if (column.isNull()) {
        bytes.push_back('n');
    } else if (column.isInteger()) {
        bytes.push_back('i');
        appendNumber(bytes, static_cast<std::uint64_t>(column.getInt64()));
    } else if (column.isFloat()) {
        bytes.push_back('f');
        appendNumber(bytes, std::bit_cast<std::uint64_t>(column.getDouble()));
    } else {
        const std::string text = column.getString();
        bytes.push_back('t');
        appendNumber(bytes, text.size());
        bytes += text;
    }
}

std::vector<std::string> sealedTables(SQLite::Database& database) {
    std::vector<std::string> names;
    SQLite::Statement find(database,
                           "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE "
                           "'sqlite_%' AND name NOT IN ('seal', 'working') ORDER BY name");
    while (find.executeStep()) names.push_back(find.getColumn(0).getString());
    return names;
}

// Where a row has a digest over all of its columns, that stands for the others.
std::string sealedColumns(const std::string& table) {
    if (table == "revision") return "garment, number, digest";
    if (table == "photo_bytes") return "photo, digest";
    return "*";
}

// In the order of all columns: the same rows give the same seal wherever they lie in the file.
std::string allRowsOf(SQLite::Database& database, const std::string& table) {
    const std::string select =
        "SELECT " + sealedColumns(table) + " FROM \"" + table + "\" ORDER BY 1";
    std::string more;
    const int columns = SQLite::Statement(database, select).getColumnCount();
    for (int i = 2; i <= columns; ++i) more += ", " + std::to_string(i);
    return select + more;
}

}  // namespace

std::string contentSeal(SQLite::Database& database) {
    std::string bytes;
    for (const std::string& table : sealedTables(database)) {
        bytes += table;
        SQLite::Statement rows(database, allRowsOf(database, table));
        while (rows.executeStep()) {
            bytes.push_back('r');
            for (int i = 0; i < rows.getColumnCount(); ++i) appendValue(bytes, rows.getColumn(i));
        }
    }
    return derivedUuid(bytes);
}

void putSeal(SQLite::Database& database) {
    SQLite::Statement put(database, "INSERT OR REPLACE INTO seal (one, digest) VALUES (1, ?)");
    put.bind(1, contentSeal(database));
    put.exec();
}

bool isSealSound(SQLite::Database& database) {
    SQLite::Statement seal(database, "SELECT digest FROM seal WHERE one = 1");
    return seal.executeStep() && seal.getColumn(0).getString() == contentSeal(database);
}

}  // namespace coutil
