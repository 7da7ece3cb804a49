#include "ui/benches/fit_bench.h"

#include <algorithm>

#include "core/store/uuid.h"
#include "ui/benches/fit_mark_editor.h"
#include "ui/benches/fit_mark_forms.h"
#include "ui/benches/fit_photo.h"
#include "ui/benches/fit_photo_view.h"
#include "ui/benches/fit_places.h"
#include "ui/canvas/table.h"
#include "ui/document/fitting_change.h"
#include "ui/document/folio_document.h"
#include "ui/document/new_folio.h"
#include "ui/words/mark_words.h"
#include "ui/words/problem_sentence.h"

// Fittings and their marks: what is typed becomes the folio's.
namespace coutil {

QString FitBench::benchName() const { return tr("Fit"); }

void FitBench::leave() {
    photoView_->closePhoto();
    TableBench::leave();
}

const Fitting* FitBench::fitting() const {
    const Garment* garment = document().garment();
    return garment == nullptr ? nullptr : findFitting(*garment, fitting_);
}

bool FitBench::isDrawn(const Fitting& fitting) const {
    if (const Pencil* pencil = document().pencil()) return isDrawnOn(fitting, *pencil);
    return document().revision() != nullptr && isDrawnOn(fitting, *document().revision());
}

// The fitting shown before, else the latest one of what is on the table, else the latest.
void FitBench::chooseFitting() {
    if (fitting() != nullptr) return;
    picked_.clear();
    draft_ = Mark();
    draft_.place = SeamPlace{};
    fitting_.clear();
    const Garment* garment = document().garment();
    if (garment == nullptr || garment->fittings.empty()) return;
    fitting_ = garment->fittings.back().id;
    for (const Fitting& each : garment->fittings)
        if (isDrawn(each)) fitting_ = each.id;
}

void FitBench::showFitting(const std::string& id) {
    document().endMerging();
    fitting_ = id;
    picked_.clear();
    followNow();
}

void FitBench::addFitting() {
    Fitting made{.id = newUuid(), .heldOn = today()};
    if (const Revision* revision = document().revision()) made.revision = revision->digest();
    if (const Pencil* pencil = document().pencil()) made.pencil = pencil->id;
    document().endMerging();
    fitting_ = made.id;
    picked_.clear();
    draft_ = Mark();
    draft_.place = SeamPlace{};
    document().change(withFittingAdded(document().folio(), document().garmentIndex(), made),
                      tr("record a fitting"));
}

void FitBench::removeFitting() {
    if (fitting() == nullptr) return;
    document().endMerging();
    const std::string gone = fitting_;
    picked_.clear();
    document().change(withFittingRemoved(document().folio(), document().garmentIndex(), gone),
                      tr("remove a fitting"));
}

void FitBench::showTried() {
    const Fitting* shown = fitting();
    if (shown == nullptr) return;
    if (shown->revision.empty()) {
        document().showPencil(shown->pencil);
    } else {
        document().showRevision(shown->revision);
    }
}

void FitBench::change(const Fitting& after, const QString& words, const QString& key) {
    const Pencil* pencil = document().pencil();
    const FittingChange changed = withFittingChanged(document().folio(), document().garmentIndex(),
                                                     pencil == nullptr ? std::string() : pencil->id,
                                                     document().revision(), after);
    document().take(changed.change, words, key);
}

// What the editor says: of the picked mark, or of a new one that is recorded as soon as it says
// enough.
void FitBench::takeMark(const Mark& after, const QString& field) {
    if (!picked_.empty()) {
        changeMark(after, field);
        return;
    }
    draft_ = after;
    const Fitting* shown = fitting();
    if (shown == nullptr || !isComplete(after) || isNote(after.kind)) {
        showCard();
        return;
    }
    draft_.id = newUuid();
    draft_.readBy = shown->readBy;
    picked_ = draft_.id;
    Fitting more = *shown;
    more.marks.push_back(draft_);
    // What is typed on goes into the same step.
    change(more, tr("mark %1").arg(markSentence(draft_, document().folio().unit)),
           QStringLiteral("mark %1 amount").arg(QString::fromStdString(picked_)));
}

void FitBench::changeMark(const Mark& after, const QString& field) {
    const Fitting* shown = fitting();
    if (shown == nullptr) return;
    Fitting changed = *shown;
    const auto place = std::ranges::find(changed.marks, after.id, &Mark::id);
    if (place == changed.marks.end()) return;
    *place = after;
    const bool isTyped = field == QLatin1String("amount") || field == QLatin1String("along") ||
                         field == QLatin1String("length") || field == QLatin1String("note");
    const QString key = QStringLiteral("mark %1 %2").arg(QString::fromStdString(after.id), field);
    change(changed, tr("mark %1").arg(markSentence(after, document().folio().unit)),
           isTyped ? key : QString());
}

void FitBench::removeMark(const std::string& id) {
    const Fitting* shown = fitting();
    if (shown == nullptr) return;
    Fitting less = *shown;
    std::erase_if(less.marks, [&](const Mark& mark) { return mark.id == id; });
    if (picked_ == id) picked_.clear();
    document().endMerging();
    change(less, tr("remove a mark"));
}

void FitBench::pickMark(const std::string& id) {
    if (picked_ == id) return;
    picked_ = id;
    followNow();
}

// The next reading is most often on the same seam and side.
void FitBench::startNext() {
    const Fitting* shown = fitting();
    if (shown == nullptr) return;
    if (picked_.empty()) {
        if (!isComplete(draft_)) return;
        draft_.id = newUuid();  // a note: nothing was typed that would have recorded it
        draft_.readBy = shown->readBy;
        Fitting more = *shown;
        more.marks.push_back(draft_);
        document().endMerging();
        change(more, tr("mark %1").arg(markSentence(draft_, document().folio().unit)));
    }
    document().endMerging();
    const Mark last = editor_->mark();
    picked_.clear();
    draft_ = {.id = {}, .kind = last.kind, .place = last.place, .side = last.side};
    followNow();
    editor_->startPlace();
}

void FitBench::attachPhotos(const QStringList& files) {
    const Fitting* shown = fitting();
    if (shown == nullptr) return;
    Fitting more = *shown;
    Folio folio = document().folio();
    for (const QString& file : files) {
        auto read = readPhoto(file);
        if (!read) {
            emit message(problemSentence(read.problems.front(), folio.unit), true);
            continue;
        }
        more.photos.push_back(read->id);
        folio.photos.push_back(std::move(*read));
    }
    if (more.photos == shown->photos) return;
    const Pencil* pencil = document().pencil();
    document().endMerging();
    document().take(withFittingChanged(folio, document().garmentIndex(),
                                       pencil == nullptr ? std::string() : pencil->id,
                                       document().revision(), more)
                        .change,
                    tr("attach photos"));
}

void FitBench::removePhoto(const std::string& id) {
    const Fitting* shown = fitting();
    if (shown == nullptr) return;
    photoView_->closePhoto();
    Folio folio = document().folio();
    auto& fittings = folio.garments[static_cast<std::size_t>(document().garmentIndex())].fittings;
    const auto place = std::ranges::find(fittings, fitting_, &Fitting::id);
    std::erase(place->photos, id);
    for (Mark& mark : place->marks)
        if (mark.spot && mark.spot->photo == id) mark.spot.reset();
    std::erase_if(folio.photos, [&](const Shared<Photo>& photo) { return photo->id == id; });
    document().endMerging();
    document().change(folio, tr("remove a photo"));
}

void FitBench::tieSpot(const PhotoSpot& spot) {
    const Fitting* shown = fitting();
    if (shown == nullptr || picked_.empty()) return;
    const auto place = std::ranges::find(shown->marks, picked_, &Mark::id);
    if (place == shown->marks.end()) return;
    Mark tied = *place;
    tied.spot = spot;
    document().endMerging();
    changeMark(tied, QStringLiteral("spot"));
}

}  // namespace coutil
