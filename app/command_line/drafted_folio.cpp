#include "app/command_line/drafted_folio.h"

#include <algorithm>
#include <utility>

#include "app/command_line/id_source.h"
#include "core/store/text_formats.h"

namespace coutil {
namespace {

std::string freeName(const Folio& folio, const std::string& wanted) {
    if (!wanted.empty()) return wanted;
    std::string plain = "Corset";
    if (findGarment(folio, plain) == nullptr) return plain;
    int number = 2;
    while (findGarment(folio, plain + " " + std::to_string(number)) != nullptr) ++number;
    return plain + " " + std::to_string(number);
}

}  // namespace

std::string enterMeasurementSet(Folio& folio, MeasurementSet set, const IdSource& ids) {
    for (const MeasurementSet& known : folio.measurementSets) {
        MeasurementSet same = set;
        same.id = known.id;
        if (same == known) return known.id;
    }
    const bool isFree = findMeasurementSet(folio, set.id) == nullptr;
    if (set.id.empty() || !isFree) set.id = ids.idFor("measurement set");
    std::string id = set.id;
    folio.measurementSets.push_back(std::move(set));
    std::ranges::stable_sort(folio.measurementSets, {}, &MeasurementSet::takenOn);
    return id;
}

Outcome<Folio> withGarment(Folio folio, const DraftInput& input, const NewGarment& garment) {
    MeasurementSet set = input.set;
    if (set.takenOn.empty()) set.takenOn = garment.date;
    const std::string name = freeName(folio, garment.name);
    if (findGarment(folio, name) != nullptr) {
        Problem problem;
        problem.code = ProblemCode::garmentTaken;
        problem.subject = name;
        return problem;
    }
    const IdSource ids(garment.isRepeatable,
                       garment.date + "\n" + folio.id + "\n" + garment.client + "\n" + name + "\n" +
                           writeMeasurementsJson(set) + writeStyleJson(input.style));
    if (folio.id.empty()) {
        folio.id = ids.idFor("folio");
        folio.client = garment.client;
        folio.unit = set.unit;
    }
    Garment made{.id = ids.idFor("garment"), .name = name, .createdOn = garment.date};
    made.pencils = {{.id = ids.idFor("pencil"),
                     .startedOn = garment.date,
                     .measurementSet = enterMeasurementSet(folio, std::move(set), ids),
                     .style = input.style}};
    folio.garments.push_back(std::move(made));
    return folio;
}

}  // namespace coutil
