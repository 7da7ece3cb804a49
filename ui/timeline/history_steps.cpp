#include "ui/timeline/history_steps.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/revision/pencils.h"
#include "core/store/uuid.h"
#include "ui/document/folio_document.h"
#include "ui/document/new_folio.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HistorySteps)
};

std::size_t garmentOf(const FolioDocument& document) {
    return static_cast<std::size_t>(document.garmentIndex());
}

NewPencil newPencil() { return {.id = newUuid(), .startedOn = today()}; }

}  // namespace

std::optional<Problem> copyPencil(FolioDocument& document, const std::string& pencil) {
    const NewPencil copy = newPencil();
    const auto after = pencilCopied(document.folio(), garmentOf(document), pencil, copy);
    if (!after) return after.problems.front();
    document.endMerging();
    document.change(*after, Words::tr("Second pencil"));
    document.showPencil(copy.id);
    return std::nullopt;
}

std::optional<Problem> rubOutPencil(FolioDocument& document, const std::string& pencil) {
    const auto after = pencilRubbedOut(document.folio(), garmentOf(document), pencil);
    if (!after) return after.problems.front();
    const QString name = pencilName(*findPencil(*document.garment(), pencil));
    document.endMerging();
    document.change(*after, Words::tr("Rub out: %1").arg(name));
    return std::nullopt;
}

std::optional<Problem> startGarment(FolioDocument& document, const std::string& revision) {
    Garment empty;
    empty.id = newUuid();
    empty.name = freeGarmentName(document.folio()).toStdString();
    empty.createdOn = today();
    const auto after = garmentBegun(document.folio(), empty, revision, newPencil());
    if (!after) return after.problems.front();
    document.endMerging();
    document.change(*after, Words::tr("New garment from a revision"));
    document.selectGarment(static_cast<int>(document.folio().garments.size()) - 1);
    return std::nullopt;
}

void namePencil(FolioDocument& document, const std::string& pencil, const QString& name) {
    Folio after = document.folio();
    std::vector<Pencil>& pencils = after.garments.at(garmentOf(document)).pencils;
    const auto place = std::ranges::find(pencils, pencil, &Pencil::id);
    if (place == pencils.end()) return;
    place->name = name.trimmed().toStdString();
    document.endMerging();
    document.change(after, Words::tr("Name the pencil"));
}

bool mayRubOut(const FolioDocument& document) {
    const Garment* garment = document.garment();
    return garment != nullptr && garment->pencils.size() + garment->revisions.size() > 1;
}

}  // namespace coutil
