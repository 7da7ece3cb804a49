#include <map>
#include <string>
#include <utility>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/folio_file/folio_rows.h"
#include "core/store/folio_file/folio_schema.h"
#include "core/store/folio_file/folio_seal.h"
#include "core/store/text_formats.h"

namespace coutil {
namespace {

using Reading = std::pair<std::optional<double>, std::optional<std::string>>;

void putReadings(SQLite::Database& database, const MeasurementSet& set) {
    std::map<Measurement, Reading> readings;
    for (const auto& [id, mm] : set.valuesMm) readings[id].first = mm;
    for (const auto& [id, text] : set.asWritten) readings[id].second = text;
    SQLite::Statement put(database, "INSERT INTO reading VALUES (?, ?, ?, ?)");
    for (const auto& [id, reading] : readings) {
        put.bind(1, set.id);
        put.bind(2, std::string(keyOf(id)));
        if (reading.first) put.bind(3, *reading.first);
        if (reading.second) put.bind(4, *reading.second);
        put.exec();
        put.reset();
        put.clearBindings();
    }
}

void putMeasurementSets(SQLite::Database& database, const std::vector<MeasurementSet>& sets) {
    SQLite::Statement put(database, "INSERT INTO measurement_set VALUES (?, ?, ?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const MeasurementSet& set : sets) {
        put.bind(1, set.id);
        put.bind(2, place++);
        put.bind(3, set.takenOn);
        put.bind(4, set.takenBy);
        put.bind(5, set.note);
        put.bind(6, std::string(keyOf(set.unit)));
        put.exec();
        put.reset();
        putReadings(database, set);
    }
}

void putPencil(SQLite::Database& database, const Garment& garment, const Pencil& pencil) {
    SQLite::Statement put(database, "INSERT INTO pencil VALUES (?, ?, ?, ?, ?)");
    put.bind(1, garment.id);
    put.bind(2, pencil.id);
    put.bind(3, pencil.startedOn);
    put.bind(4, pencil.measurementSet);
    put.bind(5, writeStyleJson(pencil.style));
    put.exec();
}

void putGarments(SQLite::Database& database, const std::vector<Garment>& garments) {
    SQLite::Statement put(database, "INSERT INTO garment VALUES (?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const Garment& garment : garments) {
        put.bind(1, garment.id);
        put.bind(2, place++);
        put.bind(3, garment.name);
        put.bind(4, garment.createdOn);
        put.exec();
        put.reset();
        for (const Pencil& pencil : garment.pencils) putPencil(database, garment, pencil);
    }
}

}  // namespace

void putFolioRows(SQLite::Database& database, const Folio& folio) {
    for (const FolioTable& table : folioTables())
        database.exec("DELETE FROM " + std::string(table.name));
    SQLite::Statement put(database, "INSERT INTO folio VALUES (1, ?, ?, ?, ?)");
    put.bind(1, folio.id);
    put.bind(2, folio.client);
    put.bind(3, folio.note);
    put.bind(4, std::string(keyOf(folio.unit)));
    put.exec();
    putMeasurementSets(database, folio.measurementSets);
    putGarments(database, folio.garments);
    putSeal(database);
}

}  // namespace coutil
