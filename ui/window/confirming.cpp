#include "ui/window/confirming.h"

#include <QSettings>
#include <algorithm>

#include "core/store/text_formats.h"
#include "ui/document/folio_document.h"
#include "ui/document/new_folio.h"
#include "ui/window/confirm_dialog.h"
#include "ui/window/folio_files.h"
#include "ui/window/settings.h"
#include "ui/words/changes_told.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {
constexpr char kByKey[] = "confirm/by";

int nextNumber(const Garment& garment) {
    int highest = 0;
    for (const auto& revision : garment.revisions) highest = std::max(highest, revision->number());
    return highest + 1;
}

}  // namespace

Confirming::Confirming(FolioDocument& document, FolioFiles& files, QWidget* window)
    : QObject(window), document_(document), files_(files), window_(window) {}

ConfirmOffer Confirming::offer() const {
    const Garment& garment = *document_.garment();
    const Folio& folio = document_.folio();
    const QStringList changes = changesOf(folio, *document_.pencil(), folio.unit);
    QString note = changes.join(QLatin1Char('\n'));
    const MeasurementSet* set = document_.measurementSet();
    if (note.isEmpty() && document_.pencil()->parent.empty() && set != nullptr) {
        note = tr("Block from the measurements of %1").arg(dateText(set->takenOn));
    }
    return {.garment = QString::fromStdString(garment.name),
            .number = nextNumber(garment),
            .date = today(),
            .by = openSettings()->value(kByKey).toString(),
            .note = note,
            .problems = document_.drafted().problems,
            .unit = folio.unit};
}

void Confirming::confirmPencil() {
    if (document_.pencil() == nullptr) return;
    document_.endMerging();
    const auto garment = static_cast<std::size_t>(document_.garmentIndex());
    const GarmentOutcome& drafted = document_.drafted();
    const auto answer = files_.ask().confirmation(window_, offer());
    if (!answer) return;
    const auto after =
        pencilConfirmed(document_.folio(), garment, document_.pencil()->id,
                        {drafted.pattern, drafted.problems}, *answer, writeRecipeJson);
    if (!after) {
        emit failed(after.problems.front());
        return;
    }
    openSettings()->setValue(kByKey, QString::fromStdString(answer->by));
    const Shared<Revision> ink = after->garments[garment].revisions.back();
    document_.takeConfirmed(*after, ink->digest());
    if (files_.save()) {
        emit told(tr("Confirmed and saved as %1.").arg(revisionName(*ink)));
    } else {
        emit notSaved(tr("Confirmed as %1, but not in a file yet: save the folio to keep it.")
                          .arg(revisionName(*ink)));
    }
}

}  // namespace coutil
