#include "ui/document/folio_document.h"

#include <QDateTime>
#include <algorithm>
#include <utility>

#include "core/revision/begin_pencil.h"
#include "core/revision/pencil_outcome.h"
#include "core/revision/recipe.h"
#include "core/store/folio_file.h"
#include "ui/document/folio_step.h"
#include "ui/document/pencil_change.h"
#include "ui/document/state_folder.h"

namespace coutil {

namespace {

// A durable record costs a few milliseconds; a drag changes the folio at every mouse move.
constexpr int kRecordPauseMs = 150;

std::string nowUtc() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString(); }

}  // namespace

FolioDocument::FolioDocument(QObject* parent) : QObject(parent) {
    recordTimer_.setSingleShot(true);
    recordTimer_.setInterval(kRecordPauseMs);
    connect(&recordTimer_, &QTimer::timeout, this, &FolioDocument::recordNow);
    connect(&undoStack_, &QUndoStack::cleanChanged, this, &FolioDocument::fileChanged);
}

FolioDocument::~FolioDocument() {
    undoStack_.disconnect(this);  // clearing it must not call into a half-gone document
    if (recordTimer_.isActive()) recordNow();
}

bool FolioDocument::isOpen() const { return isOpen_; }

const Folio& FolioDocument::folio() const { return folio_; }

const std::filesystem::path& FolioDocument::file() const { return file_; }

bool FolioDocument::isModified() const { return isOpen_ && !undoStack_.isClean(); }

QUndoStack& FolioDocument::undoStack() { return undoStack_; }

const Garment* FolioDocument::garment() const {
    const auto index = static_cast<std::size_t>(garmentIndex_);
    return index < folio_.garments.size() ? &folio_.garments[index] : nullptr;
}

const Pencil* FolioDocument::pencil() const {
    const Garment* shown = garment();
    return shown == nullptr ? nullptr : findPencil(*shown, shownPencil_);
}

const Revision* FolioDocument::revision() const {
    if (garment() == nullptr || shownRevision_.empty()) return nullptr;
    return findRevision(folio_, shownRevision_);
}

const Style& FolioDocument::style() const {
    static const Style none;
    if (const Pencil* shown = pencil()) return styleInForce(*shown);
    return revision() != nullptr ? revision()->recipe().style : none;
}

const MeasurementSet* FolioDocument::measurementSet() const {
    if (const Pencil* shown = pencil()) return setInForce(folio_, *shown);
    if (const Revision* shown = revision()) return &shown->recipe().measurements;
    return folio_.measurementSets.empty() ? nullptr : &folio_.measurementSets.back();
}

int FolioDocument::garmentIndex() const { return garmentIndex_; }

void FolioDocument::selectGarment(int index) {
    if (index == garmentIndex_ || index < 0 ||
        static_cast<std::size_t>(index) >= folio_.garments.size()) {
        return;
    }
    endMerging();
    garmentIndex_ = index;
    showNewest();
    redraft();
    emit folioChanged();
    emit shownChanged();
}

void FolioDocument::showNewest() {
    const Garment* shown = garment();
    shownPencil_.clear();
    shownRevision_.clear();
    if (shown == nullptr) return;
    if (const Pencil* latest = latestPencil(*shown)) {
        shownPencil_ = latest->id;
    } else if (!shown->revisions.empty()) {
        shownRevision_ = shown->revisions.back()->digest();
    }
}

void FolioDocument::showPencil(const std::string& id) {
    if (garment() == nullptr || shownPencil_ == id || findPencil(*garment(), id) == nullptr) return;
    endMerging();
    shownPencil_ = id;
    shownRevision_.clear();
    redraft();
    emit folioChanged();
    emit shownChanged();
}

void FolioDocument::showRevision(const std::string& digest) {
    if (shownRevision_ == digest || findRevision(folio_, digest) == nullptr) return;
    endMerging();
    shownRevision_ = digest;
    shownPencil_.clear();
    redraft();
    emit folioChanged();
    emit shownChanged();
}

const GarmentOutcome& FolioDocument::drafted() const { return drafted_; }

const GarmentOutcome& FolioDocument::lastGoodDraft() const { return lastGoodDraft_; }

void FolioDocument::open(Folio folio, std::filesystem::path file) {
    dropWorkingCopy();
    undoStack_.clear();
    isOpen_ = true;
    show(std::move(folio), std::move(file));
}

void FolioDocument::openRecovered(Folio folio, std::filesystem::path original) {
    open(std::move(folio), std::move(original));
    onDisk_ = readFolio(file_).value;  // the recovered work is not what stands there
    undoStack_.resetClean();
    recordNow();
}

void FolioDocument::close() {
    dropWorkingCopy();
    undoStack_.clear();
    isOpen_ = false;
    show({}, {});
}

void FolioDocument::show(Folio folio, std::filesystem::path file) {
    folio_ = std::move(folio);
    file_ = std::move(file);
    onDisk_ = folio_;
    garmentIndex_ = 0;
    showNewest();
    hasStoreFailed_ = false;
    ++mergeRun_;
    redraft();
    emit opened();
    emit folioChanged();
    emit shownChanged();
    emit fileChanged();
}

std::optional<Problem> FolioDocument::save(const std::filesystem::path& file) {
    endMerging();
    if (auto problem = writeFolio(folio_, file)) return problem;
    file_ = file;
    onDisk_ = folio_;
    undoStack_.setClean();
    dropWorkingCopy();
    emit fileChanged();
    return std::nullopt;
}

bool FolioDocument::hasFileChanged() const {
    if (file_.empty()) return false;
    const Outcome<Folio> there = readFolio(file_);
    if (!there) return there.problems.front().code != ProblemCode::fileMissing;
    return there.value != onDisk_;
}

void FolioDocument::change(const Folio& after, const QString& words, const QString& mergeKey) {
    if (after == folio_) return;
    undoStack_.push(new FolioStep(*this, after, words, mergeKey, mergeRun_));
}

void FolioDocument::changeStyle(const Style& style, const QString& words, const QString& mergeKey) {
    changePencil([&](Pencil& pencil) { setStyle(pencil, style); }, words, mergeKey);
}

void FolioDocument::changePencil(const std::function<void(Pencil&)>& edit, const QString& words,
                                 const QString& mergeKey) {
    take(withPencilChanged(folio_, garmentIndex_, shownPencil_, revision(), edit), words, mergeKey);
}

void FolioDocument::beginPencil(const std::string& parent, const QString& words) {
    const Revision* ink = findRevision(folio_, parent);
    if (ink == nullptr) return;
    endMerging();
    take(withPencilChanged(folio_, garmentIndex_, {}, ink, [](const Pencil&) {}), words, {});
}

// A pencil begun here is on the table before the step, so that typing goes on in the same step.
void FolioDocument::take(const PencilChange& changed, const QString& words,
                         const QString& mergeKey) {
    if (changed.pencil.empty() && pencil() != nullptr) return;
    if (changed.isBegun) {
        shownPencil_ = changed.pencil;
        shownRevision_.clear();
    }
    change(changed.folio, words, mergeKey);
    if (!changed.isBegun || pencil() == nullptr) return;
    emit shownChanged();
    emit pencilBegun(QString::fromStdString(pencil()->parent));
}

void FolioDocument::takeConfirmed(const Folio& after, const std::string& digest) {
    endMerging();
    undoStack_.clear();
    undoStack_.resetClean();  // not saved yet
    shownRevision_ = digest;
    shownPencil_.clear();
    put(after);
    recordNow();
    emit shownChanged();
    emit fileChanged();
}

void FolioDocument::changeMeasurements(const MeasurementSet& set, const QString& words,
                                       const QString& mergeKey) {
    take(withReadings(folio_, garmentIndex_, shownPencil_, revision(), set), words, mergeKey);
}

void FolioDocument::takeNewMeasurements(const QString& words) {
    const MeasurementSet* set = measurementSet();
    if (set == nullptr) return;
    endMerging();
    take(withNewSet(folio_, garmentIndex_, shownPencil_, revision(), *set), words, {});
}

void FolioDocument::endMerging() {
    ++mergeRun_;
    if (recordTimer_.isActive()) recordNow();
}

void FolioDocument::put(const Folio& folio) {
    const ShownState next =
        shownAfter(folio_, folio, garmentIndex_, {shownPencil_, shownRevision_});
    folio_ = folio;
    garmentIndex_ =
        std::clamp(garmentIndex_, 0, std::max(0, static_cast<int>(folio_.garments.size()) - 1));
    const bool isOther = next.pencil != shownPencil_ || next.revision != shownRevision_;
    shownPencil_ = next.pencil;
    shownRevision_ = next.revision;
    const bool isGone = pencil() == nullptr && revision() == nullptr;
    if (isGone) showNewest();
    redraft();
    if (!recordTimer_.isActive()) recordTimer_.start();
    emit folioChanged();
    if (isGone || isOther) emit shownChanged();
}

void FolioDocument::redraft() {
    if (const Pencil* shown = pencil()) {
        drafted_ = pencilOutcome(folio_, *shown);
    } else {
        drafted_ = revision() != nullptr ? revisionOutcome(*revision()) : GarmentOutcome{};
    }
    const std::string id = garment() != nullptr ? garment()->id : std::string();
    if (drafted_.pattern || id != lastGoodGarment_) lastGoodDraft_ = drafted_;
    lastGoodGarment_ = id;
    emit draftedChanged();
}

void FolioDocument::recordNow() {
    recordTimer_.stop();
    if (!isOpen_) return;
    const auto problem = writeWorkingCopy();
    if (problem && !hasStoreFailed_) emit storeFailed(*problem);  // once, not at every key
    hasStoreFailed_ = problem.has_value();
}

std::optional<Problem> FolioDocument::writeWorkingCopy() {
    if (!isModified()) {  // undone back to what is safe in the file: nothing to recover
        dropWorkingCopy();
        return std::nullopt;
    }
    if (workingCopy_) return workingCopy_->record(folio_, nowUtc());
    auto begun = WorkingCopy::begin(stateFolder(), folio_, file_);
    if (!begun) return begun.problems.front();
    workingCopy_ = *begun;
    return workingCopy_->record(folio_, nowUtc());
}

void FolioDocument::dropWorkingCopy() {
    recordTimer_.stop();
    if (workingCopy_) workingCopy_->discard();
    workingCopy_.reset();
}

}  // namespace coutil
