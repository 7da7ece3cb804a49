#include "app/command_line/pencil_work.h"

#include <QDate>
#include <algorithm>
#include <utility>

#include "app/command_line/opened_garment.h"
#include "core/revision/begin_pencil.h"
#include "core/revision/pencil_outcome.h"
#include "core/store/folio_file.h"

namespace coutil {
namespace {

std::string dateOf(const Call& call) {
    return call.value("--date").value_or(QDate::currentDate().toString(Qt::ISODate).toStdString());
}

// The newest pencil from a revision; with a name asked for, the one of that name.
const Pencil* pencilFromRevision(const Garment& garment, const std::string& digest,
                                 const Call& call) {
    const auto name = call.value("--pencil");
    const auto isIt = [&](const Pencil& pencil) {
        return pencil.parent == digest && (!name || pencil.name == *name);
    };
    const auto found = std::find_if(garment.pencils.rbegin(), garment.pencils.rend(), isIt);
    return found == garment.pencils.rend() ? nullptr : &*found;
}

void takePencil(PencilWork& work, const ChosenRevision& chosen, const Call& call) {
    work.pencil = chosen.pencil;
    if (!work.pencil.empty()) return;
    if (const Pencil* begun = pencilFromRevision(work.garment(), chosen.revision, call)) {
        work.pencil = begun->id;
        return;
    }
    const NewPencil made{work.ids.next("pencil"), work.date, call.value("--pencil").value_or("")};
    work.garment().pencils.push_back(pencilFrom(*findRevision(work.folio, chosen.revision), made));
    work.pencil = made.id;
}

// A pencil's name that is not there yet names the one to be begun from the revision.
Outcome<ChosenRevision> chosenToChange(const Garment& garment, const std::string& revision,
                                       const Call& call) {
    Call plain = call;
    const bool isNumber = revision != "pencil" && revision != "latest";
    if (isNumber) plain.values.erase("--pencil");
    return chosenRevision(garment, revision, plain);
}

}  // namespace

Pencil& PencilWork::changed() { return *std::ranges::find(garment().pencils, pencil, &Pencil::id); }

Outcome<PencilWork> beginPencilWork(const Call& call, const std::string& text,
                                    const std::string& revision) {
    if (const auto problem = checkDate(call)) return *problem;
    Outcome<Folio> folio = readFolio(call.operands.front());
    if (!folio) return Outcome<PencilWork>::failed(std::move(folio.problems));
    const Outcome<std::size_t> index = chosenGarment(*folio, call);
    if (!index) return Outcome<PencilWork>::failed(index.problems);
    const Garment& garment = folio->garments[*index];
    const Outcome<ChosenRevision> chosen = chosenToChange(garment, revision, call);
    if (!chosen) return Outcome<PencilWork>::failed(chosen.problems);
    const std::string content = dateOf(call) + "\n" + garment.id + "\n" + chosen->revision +
                                chosen->pencil + "\n" + std::to_string(garment.fittings.size()) +
                                "\n" + text;
    PencilWork work{.folio = {},
                    .garmentIndex = *index,
                    .pencil = {},
                    .date = dateOf(call),
                    .ids = IdSource(call.has("--date"), content)};
    work.folio = std::move(*folio);
    takePencil(work, *chosen, call);
    return work;
}

std::vector<Problem> problemsNow(PencilWork& work) {
    return pencilOutcome(work.folio, work.changed()).problems;
}

std::vector<Problem> writePencilWork(PencilWork& work, const Call& call,
                                     const std::vector<Problem>& before) {
    std::vector<Problem> fresh;
    for (const Problem& problem : problemsNow(work)) {
        if (isError(problem) && std::ranges::find(before, problem) == before.end())
            fresh.push_back(problem);
    }
    if (!fresh.empty()) return fresh;
    if (const auto problem = writeFolio(work.folio, call.operands.front())) return {*problem};
    return {};
}

}  // namespace coutil
