#include <nlohmann/json.hpp>

#include "core/store/report_formats.h"
#include "core/store/text_formats/outline_json.h"

namespace coutil {
namespace {

using nlohmann::ordered_json;

ordered_json measurementSetJson(const MeasurementSet& set) {
    return ordered_json::parse(writeMeasurementsJson(set));
}

ordered_json pencilJson(const Pencil& pencil) {
    ordered_json json;
    json["kind"] = "revision";
    json["id"] = "pencil";
    json["state"] = "pencil";
    json["date"] = pencil.startedOn;
    json["measurement_set"] = measurementSetInForce(pencil);
    return json;
}

// The timeline in the order of its dates.
ordered_json timelineJson(const Garment& garment) {
    ordered_json entries = ordered_json::array();
    for (const Pencil& pencil : garment.pencils) entries.push_back(pencilJson(pencil));
    return entries;
}

ordered_json garmentJson(const Garment& garment) {
    ordered_json json;
    json["id"] = garment.id;
    json["name"] = garment.name;
    json["created_on"] = garment.createdOn;
    if (const Pencil* pencil = latestPencil(garment))
        json["style"] = ordered_json::parse(writeStyleJson(styleInForce(*pencil)));
    json["timeline"] = timelineJson(garment);
    return json;
}

ordered_json checkJson(const GarmentCheck& check, const SentenceOf& sentence) {
    ordered_json json;
    json["name"] = check.garment;
    json["revision"] = check.revision;
    json["problems"] = text_formats::problemsJson(check.problems, sentence);
    json["estimates"] = ordered_json::array();
    for (const Estimate& estimate : check.estimates)
        json["estimates"].push_back(text_formats::estimateJson(estimate));
    return json;
}

}  // namespace

std::string writeFolioInfoJson(const Folio& folio) {
    ordered_json json;
    json["coutil"] = "info";
    json["version"] = 1;
    json["id"] = folio.id;
    json["client"] = folio.client;
    json["note"] = folio.note;
    json["unit"] = keyOf(folio.unit);
    json["measurement_sets"] = ordered_json::array();
    for (const MeasurementSet& set : folio.measurementSets)
        json["measurement_sets"].push_back(measurementSetJson(set));
    json["garments"] = ordered_json::array();
    for (const Garment& garment : folio.garments) json["garments"].push_back(garmentJson(garment));
    return text_formats::dumped(json) + "\n";
}

std::string writeCheckJson(const std::vector<GarmentCheck>& checks, const SentenceOf& sentence) {
    ordered_json json;
    json["coutil"] = "check";
    json["version"] = 1;
    json["file"] = "sound";
    json["garments"] = ordered_json::array();
    for (const GarmentCheck& check : checks) json["garments"].push_back(checkJson(check, sentence));
    return text_formats::dumped(json) + "\n";
}

}  // namespace coutil
