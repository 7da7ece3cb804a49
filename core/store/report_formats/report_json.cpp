#include <nlohmann/json.hpp>

#include "core/revision/timeline.h"
#include "core/store/report_formats.h"
#include "core/store/text_formats/outline_json.h"

namespace coutil {
namespace {

using nlohmann::ordered_json;

ordered_json measurementSetJson(const MeasurementSet& set) {
    return ordered_json::parse(writeMeasurementsJson(set));
}

// The number of a parent, and its garment where that is another.
void putParent(ordered_json& json, const Folio& folio, const Garment& garment,
               const std::string& digest) {
    json["parent"] = nullptr;
    const Revision* parent = digest.empty() ? nullptr : findRevision(folio, digest);
    if (parent == nullptr) return;
    json["parent"] = parent->number();
    if (parent->content().garment == garment.id) return;
    for (const Garment& other : folio.garments)
        if (other.id == parent->content().garment) json["parent_garment"] = other.name;
}

ordered_json revisionJson(const Folio& folio, const Garment& garment, const Revision& revision) {
    const RevisionContent& content = revision.content();
    ordered_json json;
    json["kind"] = "revision";
    json["id"] = content.number;
    json["state"] = "confirmed";
    json["date"] = content.confirmedOn;
    json["by"] = content.confirmedBy;
    json["note"] = content.note;
    putParent(json, folio, garment, content.parent);
    json["digest"] = revision.digest();
    json["measurement_set"] = content.recipe.measurements.id;
    json["alterations"] = content.recipe.alterations.size();
    if (!content.errorsAccepted.empty()) json["errors_accepted"] = content.errorsAccepted;
    return json;
}

ordered_json pencilJson(const Folio& folio, const Garment& garment, const Pencil& pencil) {
    ordered_json json;
    json["kind"] = "revision";
    json["id"] = "pencil";
    json["state"] = "pencil";
    json["date"] = pencil.startedOn;
    if (!pencil.name.empty()) json["name"] = pencil.name;
    putParent(json, folio, garment, pencil.parent);
    json["measurement_set"] = measurementSetInForce(pencil);
    json["alterations"] = pencil.alterations.size();
    return json;
}

ordered_json fittingJson(const Folio& folio, const Fitting& fitting) {
    ordered_json json;
    json["kind"] = "fitting";
    json["id"] = fitting.id;
    json["date"] = fitting.heldOn;
    json["how"] = keyOf(fitting.how);
    json["by"] = fitting.readBy;
    json["note"] = fitting.note;
    const Revision* tried = findRevision(folio, fitting.revision);
    json["revision"] = tried == nullptr ? ordered_json("pencil") : ordered_json(tried->number());
    json["marks"] = fitting.marks.size();
    json["photos"] = fitting.photos.size();
    return json;
}

ordered_json entryJson(const Folio& folio, const Garment& garment, const TimelineEntry& entry) {
    switch (entry.kind) {
        case TimelineKind::revision:
            return revisionJson(folio, garment, *garment.revisions[entry.index]);
        case TimelineKind::fitting:
            return fittingJson(folio, garment.fittings[entry.index]);
        case TimelineKind::pencil:
            return pencilJson(folio, garment, garment.pencils[entry.index]);
    }
    return {};
}

ordered_json timelineJson(const Folio& folio, const Garment& garment) {
    ordered_json entries = ordered_json::array();
    for (const TimelineEntry& entry : timelineOf(garment))
        entries.push_back(entryJson(folio, garment, entry));
    return entries;
}

ordered_json garmentJson(const Folio& folio, const Garment& garment) {
    ordered_json json;
    json["id"] = garment.id;
    json["name"] = garment.name;
    json["created_on"] = garment.createdOn;
    if (const Pencil* pencil = latestPencil(garment))
        json["style"] = ordered_json::parse(writeStyleJson(styleInForce(*pencil)));
    json["timeline"] = timelineJson(folio, garment);
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
    json["errors_accepted"] = ordered_json::array();
    for (const AcceptedErrors& accepted : check.acceptedErrors) {
        json["errors_accepted"].push_back(
            {{"revision", accepted.revision}, {"text", accepted.text}});
    }
    for (const DrawnPanelCheck& panel : check.drawing) {
        json["drawing"].push_back(
            {{"panel", panel.panel}, {"largest", panel.largestMm}, {"scale", panel.scale}});
    }
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
    for (const Garment& garment : folio.garments)
        json["garments"].push_back(garmentJson(folio, garment));
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
