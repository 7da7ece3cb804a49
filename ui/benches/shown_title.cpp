#include "ui/benches/shown_title.h"

#include "ui/canvas/table_scene.h"
#include "ui/document/folio_document.h"
#include "ui/words/revision_words.h"

namespace coutil {

QString shownName(const FolioDocument& document) {
    if (const Pencil* pencil = document.pencil()) return pencilName(*pencil);
    const Revision* revision = document.revision();
    return revision == nullptr ? QString() : revisionName(*revision);
}

void captionScene(TableScene& scene, const FolioDocument& document) {
    scene.caption = shownName(document);
    scene.isPencil = document.revision() == nullptr;
}

TracingTitle shownTitle(const FolioDocument& document, const QDate& printedOn) {
    TracingTitle title;
    if (const Garment* garment = document.garment()) title.garment = garment->name;
    title.client = document.folio().client;
    const Revision* revision = document.revision();
    title.isPencil = revision == nullptr;
    title.revision = title.isPencil ? "pencil" : std::to_string(revision->number());
    title.date = title.isPencil ? printedOn.toString(Qt::ISODate).toStdString()
                                : revision->content().confirmedOn;
    return title;
}

}  // namespace coutil
