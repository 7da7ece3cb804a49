#include "app/command_line/opened_garment.h"

#include <charconv>
#include <utility>

#include "core/measurements/iso_date.h"
#include "core/revision/pencil_outcome.h"
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

// What can be named in a garment: "pencil, 1, 2".
std::string revisionNames(const Garment& garment) {
    std::string names = garment.pencils.empty() ? "" : "pencil";
    for (const Shared<Revision>& revision : garment.revisions)
        names += (names.empty() ? "" : ", ") + std::to_string(revision->number());
    return names;
}

const Pencil* pencilNamed(const Garment& garment, const Call& call) {
    const auto name = call.value("--pencil");
    if (!name) return latestPencil(garment);
    for (const Pencil& pencil : garment.pencils)
        if (pencil.name == *name) return &pencil;
    return nullptr;
}

const Revision* revisionNumbered(const Garment& garment, const std::string& id) {
    int number = 0;
    const auto [end, fault] = std::from_chars(id.data(), id.data() + id.size(), number);
    if (fault != std::errc() || end != id.data() + id.size()) return nullptr;
    return findRevision(garment, number);
}

}  // namespace

std::optional<Problem> checkDate(const Call& call) {
    const auto date = call.value("--date");
    if (!date || isIsoDate(*date)) return std::nullopt;
    return problemOf(ProblemCode::dateUnreadable, "--date", *date);
}

Outcome<std::vector<std::size_t>> chosenGarments(const Folio& folio, const Call& call) {
    const auto name = call.value("--garment");
    std::vector<std::size_t> chosen;
    for (std::size_t i = 0; i < folio.garments.size(); ++i)
        if (!name || folio.garments[i].name == *name) chosen.push_back(i);
    if (name && chosen.empty())
        return problemOf(ProblemCode::garmentUnknown, *name, garmentNames(folio));
    return chosen;
}

Outcome<std::size_t> chosenGarment(const Folio& folio, const Call& call) {
    Outcome<std::vector<std::size_t>> garments = chosenGarments(folio, call);
    if (!garments) return Outcome<std::size_t>::failed(std::move(garments.problems));
    if (garments->empty()) return problemOf(ProblemCode::garmentUnknown, "", "");
    if (garments->size() > 1) {
        return problemOf(ProblemCode::callIncomplete, call.command,
                         "--garment NAME (" + garmentNames(folio) + ")");
    }
    return garments->front();
}

Outcome<ChosenRevision> chosenRevision(const Garment& garment, const std::string& id,
                                       const Call& call) {
    if (const Revision* revision = revisionNumbered(garment, id))
        return ChosenRevision{revision->digest(), {}};
    if (id == "pencil" || id == "latest") {
        if (const Pencil* pencil = pencilNamed(garment, call))
            return ChosenRevision{{}, pencil->id};
        if (id == "latest" && !call.has("--pencil") && !garment.revisions.empty())
            return ChosenRevision{garment.revisions.back()->digest(), {}};
    }
    const std::string asked = call.value("--pencil").value_or(id);
    return problemOf(ProblemCode::revisionUnknown, asked, revisionNames(garment));
}

GarmentOutcome outcomeOf(const Folio& folio, const Garment& garment, const ChosenRevision& chosen) {
    if (const Pencil* pencil = findPencil(garment, chosen.pencil))
        return pencilOutcome(folio, *pencil);
    const Revision* revision = findRevision(folio, chosen.revision);
    return revision == nullptr ? GarmentOutcome{} : revisionOutcome(*revision);
}

RevisionHead headOf(const Folio& folio, const Garment& garment, const ChosenRevision& chosen) {
    RevisionHead head;
    std::string parent;
    if (const Pencil* pencil = findPencil(garment, chosen.pencil)) {
        head.date = pencil->startedOn;
        parent = pencil->parent;
    } else if (const Revision* revision = findRevision(folio, chosen.revision)) {
        head.id = std::to_string(revision->number());
        head.state = "confirmed";
        head.date = revision->content().confirmedOn;
        head.digest = revision->digest();
        parent = revision->content().parent;
    }
    if (const Revision* before = findRevision(folio, parent))
        head.parent = std::to_string(before->number());
    return head;
}

Outcome<OpenedGarment> openGarment(const Call& call) {
    if (const auto problem = checkDate(call)) return *problem;
    Outcome<Folio> folio = readFolio(call.operands.front());
    if (!folio) return Outcome<OpenedGarment>::failed(std::move(folio.problems));
    const Outcome<std::size_t> index = chosenGarment(*folio, call);
    if (!index) return Outcome<OpenedGarment>::failed(index.problems);
    const Garment& garment = folio->garments[*index];
    const Outcome<ChosenRevision> chosen =
        chosenRevision(garment, call.value("--revision").value_or("latest"), call);
    if (!chosen) return Outcome<OpenedGarment>::failed(chosen.problems);
    OpenedGarment opened{.folio = {},
                         .garmentIndex = *index,
                         .chosen = *chosen,
                         .outcome = outcomeOf(*folio, garment, *chosen),
                         .head = headOf(*folio, garment, *chosen)};
    opened.folio = std::move(*folio);
    if (opened.head.digest.empty())
        opened.head.date = call.value("--date").value_or(opened.head.date);
    std::vector<Problem> problems = opened.outcome.problems;
    if (!opened.outcome.pattern) return Outcome<OpenedGarment>::failed(std::move(problems));
    return {std::move(opened), std::move(problems)};
}

TracingTitle titleFor(const OpenedGarment& opened, const Call& call) {
    TracingTitle title;
    title.garment = opened.garment().name;
    if (!call.has("--no-name")) title.client = opened.folio.client;
    title.revision = opened.head.id;
    title.date = opened.head.date;
    title.isPencil = opened.head.digest.empty();
    return title;
}

}  // namespace coutil
