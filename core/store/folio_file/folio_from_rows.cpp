#include <string>
#include <utility>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/folio_file/folio_rows.h"
#include "core/store/folio_file/photo_rows.h"
#include "core/store/making_up_formats.h"
#include "core/store/text_formats.h"

namespace coutil {
namespace {

std::optional<LengthUnit> unitNamed(const std::string& key) {
    for (const LengthUnit unit : {LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::inch})
        if (keyOf(unit) == key) return unit;
    return std::nullopt;
}

std::string noNewId() { return {}; }

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

void takeSetAside(SQLite::Database& database, const std::string& garment, Pencil& pencil) {
    SQLite::Statement rows(database,
                           "SELECT code, subject, panel, reason FROM set_aside "
                           "WHERE garment = ? AND pencil = ? ORDER BY place");
    rows.bind(1, garment);
    rows.bind(2, pencil.id);
    while (rows.executeStep()) {
        pencil.setAside.push_back({rows.getColumn(0).getString(), rows.getColumn(1).getString(),
                                   rows.getColumn(2).getString(), rows.getColumn(3).getString()});
    }
}

bool takePencils(SQLite::Database& database, Garment& garment) {
    SQLite::Statement rows(database,
                           "SELECT id, started_on, measurement_set, style, name, parent, "
                           "alterations FROM pencil WHERE garment = ? ORDER BY place");
    rows.bind(1, garment.id);
    while (rows.executeStep()) {
        Outcome<Style> style = readStyleJson(rows.getColumn(3).getString());
        auto alterations = readAlterationsJson(rows.getColumn(6).getString(), noNewId);
        if (!style || !alterations) return false;
        Pencil pencil{.id = rows.getColumn(0).getString(),
                      .startedOn = rows.getColumn(1).getString(),
                      .measurementSet = rows.getColumn(2).getString(),
                      .style = std::move(*style),
                      .name = rows.getColumn(4).getString(),
                      .parent = rows.getColumn(5).getString(),
                      .alterations = std::move(*alterations)};
        takeSetAside(database, garment.id, pencil);
        garment.pencils.push_back(std::move(pencil));
    }
    return true;
}

void takePhotosOf(SQLite::Database& database, Fitting& fitting) {
    SQLite::Statement rows(database,
                           "SELECT photo FROM fitting_photo WHERE fitting = ? ORDER BY place");
    rows.bind(1, fitting.id);
    while (rows.executeStep()) fitting.photos.push_back(rows.getColumn(0).getString());
}

std::optional<FittingKind> fittingKindNamed(const std::string& key) {
    for (const FittingKind kind : {FittingKind::posted, FittingKind::inPerson})
        if (keyOf(kind) == key) return kind;
    return std::nullopt;
}

bool takeFittings(SQLite::Database& database, Garment& garment) {
    SQLite::Statement rows(database,
                           "SELECT id, held_on, how, read_by, revision, pencil, note, marks "
                           "FROM fitting WHERE garment = ? ORDER BY place");
    rows.bind(1, garment.id);
    while (rows.executeStep()) {
        const auto how = fittingKindNamed(rows.getColumn(2).getString());
        auto marks = readMarksJson(rows.getColumn(7).getString(), noNewId);
        if (!how || !marks) return false;
        Fitting fitting{.id = rows.getColumn(0).getString(),
                        .heldOn = rows.getColumn(1).getString(),
                        .how = *how,
                        .readBy = rows.getColumn(3).getString(),
                        .revision = rows.getColumn(4).getString(),
                        .pencil = rows.getColumn(5).getString(),
                        .note = rows.getColumn(6).getString(),
                        .marks = std::move(marks->marks),
                        .photos = {}};
        takePhotosOf(database, fitting);
        garment.fittings.push_back(std::move(fitting));
    }
    return true;
}

bool takeMakingUp(SQLite::Database& database, Garment& garment) {
    SQLite::Statement row(database, "SELECT choices, tracing FROM making_up WHERE garment = ?");
    row.bind(1, garment.id);
    if (!row.executeStep()) return false;
    auto choices = readMakingUpJson(row.getColumn(0).getString());
    auto tracing = readTracingChoicesJson(row.getColumn(1).getString());
    if (!choices || !tracing) return false;
    garment.makingUp = std::move(*choices);
    garment.tracing = std::move(*tracing);
    return true;
}

bool takeGarments(SQLite::Database& database, RevisionsByGarment& revisions, Folio& folio) {
    SQLite::Statement rows(database, "SELECT id, name, created_on FROM garment ORDER BY place");
    while (rows.executeStep()) {
        Garment garment;
        garment.id = rows.getColumn(0).getString();
        garment.name = rows.getColumn(1).getString();
        garment.createdOn = rows.getColumn(2).getString();
        if (auto own = revisions.extract(garment.id)) garment.revisions = std::move(own.mapped());
        if (!takeMakingUp(database, garment) || !takePencils(database, garment) ||
            !takeFittings(database, garment))
            return false;
        folio.garments.push_back(std::move(garment));
    }
    return revisions.empty();  // or there are revisions of a garment that is not there
}

}  // namespace

std::optional<Folio> folioFromRows(SQLite::Database& database, RevisionsByGarment revisions) {
    SQLite::Statement row(database, "SELECT id, client, note, unit FROM folio WHERE one = 1");
    if (!row.executeStep()) return std::nullopt;
    Folio folio;
    folio.id = row.getColumn(0).getString();
    folio.client = row.getColumn(1).getString();
    folio.note = row.getColumn(2).getString();
    const auto unit = unitNamed(row.getColumn(3).getString());
    if (!unit || !takeMeasurementSets(database, folio) ||
        !takeGarments(database, revisions, folio) || !takePhotos(database, folio))
        return std::nullopt;
    folio.unit = *unit;
    return folio;
}

}  // namespace coutil
