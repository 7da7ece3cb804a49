#include "app/command_line/opened_garment.h"

#include <utility>

#include "core/measurements/iso_date.h"
#include "core/store/folio_file.h"

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, std::string subject, std::string detail) {
    Problem problem;
    problem.code = code;
    problem.subject = std::move(subject);
    problem.detail = std::move(detail);
    return problem;
}

std::string garmentNames(const Folio& folio) {
    std::string names;
    for (const Garment& garment : folio.garments)
        names += (names.empty() ? "" : ", ") + garment.name;
    return names;
}

}  // namespace

std::optional<Problem> checkRevision(const Call& call) {
    // Nothing can be confirmed yet: the pencil is the latest of all there is.
    const std::string revision = call.value("--revision").value_or("latest");
    if (revision == "latest" || revision == "pencil") return std::nullopt;
    return problemOf(ProblemCode::revisionUnknown, revision, "pencil");
}

std::optional<Problem> checkDate(const Call& call) {
    const auto date = call.value("--date");
    if (!date || isIsoDate(*date)) return std::nullopt;
    return problemOf(ProblemCode::dateUnreadable, "--date", *date);
}

Outcome<std::vector<Garment>> chosenGarments(const Folio& folio, const Call& call) {
    const auto name = call.value("--garment");
    if (!name) return folio.garments;
    const Garment* garment = findGarment(folio, *name);
    if (garment == nullptr)
        return problemOf(ProblemCode::garmentUnknown, *name, garmentNames(folio));
    return std::vector<Garment>{*garment};
}

GarmentOutcome draftedIn(const Folio& folio, const Garment& garment) {
    const Pencil* pencil = latestPencil(garment);
    if (pencil == nullptr) return {};
    if (const auto* set = findMeasurementSet(folio, measurementSetInForce(*pencil)))
        return draftGarment(*set, styleInForce(*pencil));
    return draftGarment({}, styleInForce(*pencil));
}

Outcome<OpenedGarment> openGarment(const Call& call) {
    if (const auto problem = checkRevision(call)) return *problem;
    if (const auto problem = checkDate(call)) return *problem;
    Outcome<Folio> folio = readFolio(call.operands.front());
    if (!folio) return Outcome<OpenedGarment>::failed(std::move(folio.problems));
    Outcome<std::vector<Garment>> garments = chosenGarments(*folio, call);
    if (!garments) return Outcome<OpenedGarment>::failed(std::move(garments.problems));
    if (garments->empty()) return problemOf(ProblemCode::garmentUnknown, "", "");
    if (garments->size() > 1) {
        return problemOf(ProblemCode::callIncomplete, call.command,
                         "--garment NAME (" + garmentNames(*folio) + ")");
    }
    OpenedGarment opened;
    opened.garment = garments->front();
    opened.outcome = draftedIn(*folio, opened.garment);
    opened.folio = std::move(*folio);
    if (const Pencil* pencil = latestPencil(opened.garment)) opened.head.date = pencil->startedOn;
    opened.head.date = call.value("--date").value_or(opened.head.date);
    std::vector<Problem> problems = opened.outcome.problems;
    if (!opened.outcome.pattern) return Outcome<OpenedGarment>::failed(std::move(problems));
    return {std::move(opened), std::move(problems)};
}

TracingTitle titleFor(const OpenedGarment& opened, const Call& call) {
    TracingTitle title;
    title.garment = opened.garment.name;
    if (!call.has("--no-name")) title.client = opened.folio.client;
    title.revision = opened.head.id;
    title.date = opened.head.date;
    title.isPencil = true;
    return title;
}

}  // namespace coutil
