#include <map>
#include <string>
#include <utility>

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/store/folio_file/folio_rows.h"
#include "core/store/folio_file/folio_schema.h"
#include "core/store/folio_file/folio_seal.h"
#include "core/store/folio_file/photo_rows.h"
#include "core/store/folio_file/revision_rows.h"
#include "core/store/making_up_formats.h"
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

void putSetAside(SQLite::Database& database, const Garment& garment, const Pencil& pencil) {
    SQLite::Statement put(database, "INSERT INTO set_aside VALUES (?, ?, ?, ?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const SetAside& each : pencil.setAside) {
        put.bind(1, garment.id);
        put.bind(2, pencil.id);
        put.bind(3, place++);
        put.bind(4, each.code);
        put.bind(5, each.subject);
        put.bind(6, each.panel);
        put.bind(7, each.reason);
        put.exec();
        put.reset();
    }
}

void putPencils(SQLite::Database& database, const Garment& garment) {
    SQLite::Statement put(database, "INSERT INTO pencil VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const Pencil& pencil : garment.pencils) {
        put.bind(1, garment.id);
        put.bind(2, pencil.id);
        put.bind(3, place++);
        put.bind(4, pencil.startedOn);
        put.bind(5, pencil.measurementSet);
        put.bind(6, writeStyleJson(pencil.style));
        put.bind(7, pencil.name);
        put.bind(8, pencil.parent);
        put.bind(9, writeAlterationsJson(pencil.alterations));
        put.exec();
        put.reset();
        putSetAside(database, garment, pencil);
    }
}

void putPhotosOf(SQLite::Database& database, const Fitting& fitting) {
    SQLite::Statement put(database, "INSERT INTO fitting_photo VALUES (?, ?, ?)");
    std::int64_t place = 0;
    for (const std::string& photo : fitting.photos) {
        put.bind(1, fitting.id);
        put.bind(2, place++);
        put.bind(3, photo);
        put.exec();
        put.reset();
    }
}

void putFittings(SQLite::Database& database, const Garment& garment) {
    SQLite::Statement put(database, "INSERT INTO fitting VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const Fitting& fitting : garment.fittings) {
        MarksText marks;
        marks.marks = fitting.marks;
        put.bind(1, fitting.id);
        put.bind(2, garment.id);
        put.bind(3, place++);
        put.bind(4, fitting.heldOn);
        put.bind(5, std::string(keyOf(fitting.how)));
        put.bind(6, fitting.readBy);
        put.bind(7, fitting.revision);
        put.bind(8, fitting.pencil);
        put.bind(9, fitting.note);
        put.bind(10, writeMarksJson(marks));
        put.exec();
        put.reset();
        putPhotosOf(database, fitting);
    }
}

void putMakingUp(SQLite::Database& database, const Garment& garment) {
    SQLite::Statement put(database, "INSERT INTO making_up VALUES (?, ?, ?)");
    put.bind(1, garment.id);
    put.bind(2, writeMakingUpJson(garment.makingUp));
    put.bind(3, writeTracingChoicesJson(garment.tracing));
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
        putMakingUp(database, garment);
        putPencils(database, garment);
        putFittings(database, garment);
    }
}

}  // namespace

void putFolioRows(SQLite::Database& database, const Folio& folio) {
    for (const FolioTable& table : folioTables()) {
        if (table.kept == FolioTable::Kept::untilTheNextChange)
            database.exec("DELETE FROM " + std::string(table.name));
    }
    SQLite::Statement put(database, "INSERT INTO folio VALUES (1, ?, ?, ?, ?)");
    put.bind(1, folio.id);
    put.bind(2, folio.client);
    put.bind(3, folio.note);
    put.bind(4, std::string(keyOf(folio.unit)));
    put.exec();
    putMeasurementSets(database, folio.measurementSets);
    putGarments(database, folio.garments);
    putRevisionRows(database, folio);
    putPhotoRows(database, folio);
    putSeal(database);
}

}  // namespace coutil
