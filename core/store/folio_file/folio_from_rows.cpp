#include <string>
#include <utility>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/folio_file/folio_rows.h"
#include "core/store/text_formats.h"

namespace coutil {
namespace {

std::optional<LengthUnit> unitNamed(const std::string& key) {
    for (const LengthUnit unit : {LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::inch})
        if (keyOf(unit) == key) return unit;
    return std::nullopt;
}

bool takeReadings(SQLite::Database& database, MeasurementSet& set) {
    SQLite::Statement rows(
        database, "SELECT name, value_mm, as_written FROM reading WHERE measurement_set = ?");
    rows.bind(1, set.id);
    while (rows.executeStep()) {
        const auto id = measurementNamed(rows.getColumn(0).getString());
        if (!id) return false;
        if (!rows.isColumnNull(1)) set.valuesMm[*id] = rows.getColumn(1).getDouble();
        if (!rows.isColumnNull(2)) set.asWritten[*id] = rows.getColumn(2).getString();
    }
    return true;
}

bool takeMeasurementSets(SQLite::Database& database, Folio& folio) {
    SQLite::Statement rows(database,
                           "SELECT id, taken_on, taken_by, note, unit FROM measurement_set "
                           "ORDER BY place");
    while (rows.executeStep()) {
        MeasurementSet set;
        set.id = rows.getColumn(0).getString();
        set.takenOn = rows.getColumn(1).getString();
        set.takenBy = rows.getColumn(2).getString();
        set.note = rows.getColumn(3).getString();
        const auto unit = unitNamed(rows.getColumn(4).getString());
        if (!unit || !takeReadings(database, set)) return false;
        set.unit = *unit;
        folio.measurementSets.push_back(std::move(set));
    }
    return true;
}

std::optional<Pencil> pencilOf(SQLite::Database& database, const std::string& garment) {
    SQLite::Statement row(
        database, "SELECT id, started_on, measurement_set, style FROM pencil WHERE garment = ?");
    row.bind(1, garment);
    if (!row.executeStep()) return std::nullopt;
    Outcome<Style> style = readStyleJson(row.getColumn(3).getString());
    if (!style) return std::nullopt;
    return Pencil{row.getColumn(0).getString(), row.getColumn(1).getString(),
                  row.getColumn(2).getString(), std::move(*style)};
}

bool takeGarments(SQLite::Database& database, Folio& folio) {
    SQLite::Statement rows(database, "SELECT id, name, created_on FROM garment ORDER BY place");
    while (rows.executeStep()) {
        Garment garment;
        garment.id = rows.getColumn(0).getString();
        garment.name = rows.getColumn(1).getString();
        garment.createdOn = rows.getColumn(2).getString();
        std::optional<Pencil> pencil = pencilOf(database, garment.id);
        if (!pencil) return false;
        garment.pencils.push_back(std::move(*pencil));
        folio.garments.push_back(std::move(garment));
    }
    return true;
}

}  // namespace

std::optional<Folio> folioFromRows(SQLite::Database& database) {
    SQLite::Statement row(database, "SELECT id, client, note, unit FROM folio WHERE one = 1");
    if (!row.executeStep()) return std::nullopt;
    Folio folio;
    folio.id = row.getColumn(0).getString();
    folio.client = row.getColumn(1).getString();
    folio.note = row.getColumn(2).getString();
    const auto unit = unitNamed(row.getColumn(3).getString());
    if (!unit || !takeMeasurementSets(database, folio) || !takeGarments(database, folio))
        return std::nullopt;
    folio.unit = *unit;
    return folio;
}

}  // namespace coutil
