#include "ui/papers/document_papers.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/revision/pencil_outcome.h"
#include "core/sheets/change_sheet.h"
#include "ui/benches/shown_title.h"
#include "ui/document/folio_document.h"
#include "ui/papers/change_words.h"
#include "ui/papers/fitting_paper.h"
#include "ui/papers/measuring_paper.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

using Pages = Outcome<std::vector<SheetDrawing>>;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Papers)
};

PaperHead headOf(const FolioDocument& document, const PaperChoices& choices) {
    PaperHead head;
    head.paper = choices.paper;
    head.unit = choices.unit;
    head.printedOn = choices.printedOn;
    if (choices.withClient) head.client = QString::fromStdString(document.folio().client);
    if (choices.kind == PaperKind::measuring) return head;
    if (const Garment* garment = document.garment())
        head.garment = QString::fromStdString(garment->name);
    head.state = shownName(document);
    return head;
}

StateWords wordsOf(const Revision& revision) {
    return {revisionName(revision).toStdString(),
            Words::tr("revision %1").arg(revision.number()).toStdString()};
}

StateWords wordsOf(const Pencil& pencil) {
    const std::string name = pencilName(pencil).toStdString();
    return {name, name};
}

struct State {
    StateWords words;
    std::optional<Pattern> pattern;
    std::vector<Problem> problems;
};

State stateOf(const FolioDocument& document, const StateRef& ref) {
    State state;
    GarmentOutcome outcome;
    if (const Revision* revision = findRevision(document.folio(), ref.digest)) {
        state.words = wordsOf(*revision);
        outcome = revisionOutcome(*revision);
    } else if (const Pencil* pencil = findPencil(*document.garment(), ref.pencil)) {
        state.words = wordsOf(*pencil);
        outcome = pencilOutcome(document.folio(), *pencil);
    }
    state.pattern = std::move(outcome.pattern);
    state.problems = std::move(outcome.problems);
    return state;
}

Pages changePages(const FolioDocument& document, const PaperChoices& choices) {
    State older = stateOf(document, choices.older);
    if (!older.pattern) {
        Problem unknown;
        unknown.code = ProblemCode::revisionUnknown;
        if (older.problems.empty()) older.problems.push_back(unknown);
        return Pages::failed(std::move(older.problems));
    }
    const Revision* revision = document.revision();
    const StateWords newer = revision != nullptr ? wordsOf(*revision) : wordsOf(*document.pencil());
    TracingTitle title = shownTitle(document, choices.printedOn);
    if (!choices.withClient) title.client.clear();
    SheetOptions options;
    options.paper = choices.paper;
    auto sheet = changeSheet(*older.pattern, *document.drafted().pattern,
                             {revision != nullptr ? revision->number() : 0}, options,
                             changeWords(title, older.words, newer, options, choices.unit));
    if (!sheet) return Pages::failed(std::move(sheet.problems));
    return std::move(sheet->pages);
}

}  // namespace

QString paperName(PaperKind kind) {
    switch (kind) {
        case PaperKind::measuring:
            return Words::tr("Measuring sheet");
        case PaperKind::fitting:
            return Words::tr("Fitting sheet");
        case PaperKind::change:
            return Words::tr("Change sheet");
    }
    return {};
}

std::vector<OlderState> olderStates(const FolioDocument& document) {
    std::vector<OlderState> states;
    const Garment* garment = document.garment();
    if (garment == nullptr) return states;
    const Revision* shown = document.revision();
    const Pencil* pencil = document.pencil();
    std::string parent = pencil != nullptr ? pencil->parent : std::string();
    if (shown != nullptr) parent = shown->content().parent;
    const auto addRevision = [&](const Revision& revision) {
        states.push_back({{revision.digest(), {}}, revisionName(revision)});
    };
    // The parent may be of another garment.
    if (const Revision* first = findRevision(document.folio(), parent)) addRevision(*first);
    for (auto it = garment->revisions.rbegin(); it != garment->revisions.rend(); ++it) {
        const Revision& revision = **it;
        if (revision.digest() == parent || (shown != nullptr && revision == *shown)) continue;
        addRevision(revision);
    }
    for (const Pencil& other : garment->pencils) {
        if (pencil != nullptr && other.id == pencil->id) continue;
        states.push_back({{{}, other.id}, pencilName(other)});
    }
    return states;
}

Pages documentPaper(const FolioDocument& document, const PaperChoices& choices) {
    const PaperHead head = headOf(document, choices);
    if (choices.kind == PaperKind::measuring) return measuringPaper(head);
    const auto& pattern = document.drafted().pattern;
    if (document.garment() == nullptr || !pattern) {
        Problem problem;
        problem.code = ProblemCode::pencilMissing;
        if (document.garment() != nullptr) problem.subject = document.garment()->name;
        return problem;
    }
    if (choices.kind == PaperKind::fitting) return fittingPaper(*pattern, head, choices.returnBy);
    return changePages(document, choices);
}

}  // namespace coutil
