#include "ui/document/folio_document.h"

#include <QDateTime>
#include <algorithm>
#include <utility>

#include "core/store/folio_file.h"
#include "ui/document/folio_step.h"
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
    return shown == nullptr ? nullptr : latestPencil(*shown);
}

const MeasurementSet* FolioDocument::measurementSet() const {
    if (const Pencil* shown = pencil()) {
        return findMeasurementSet(folio_, measurementSetInForce(*shown));
    }
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
    redraft();
    emit folioChanged();
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
    hasStoreFailed_ = false;
    ++mergeRun_;
    redraft();
    emit opened();
    emit folioChanged();
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
    if (pencil() == nullptr) return;
    Folio after = folio_;
    after.garments[static_cast<std::size_t>(garmentIndex_)].pencils.back().style = style;
    change(after, words, mergeKey);
}

void FolioDocument::changeMeasurements(const MeasurementSet& set, const QString& words,
                                       const QString& mergeKey) {
    Folio after = folio_;
    const auto place = std::ranges::find(after.measurementSets, set.id, &MeasurementSet::id);
    if (place == after.measurementSets.end()) return;
    *place = set;
    change(after, words, mergeKey);
}

void FolioDocument::endMerging() {
    ++mergeRun_;
    if (recordTimer_.isActive()) recordNow();
}

void FolioDocument::put(const Folio& folio) {
    folio_ = folio;
    garmentIndex_ =
        std::clamp(garmentIndex_, 0, std::max(0, static_cast<int>(folio_.garments.size()) - 1));
    redraft();
    if (!recordTimer_.isActive()) recordTimer_.start();
    emit folioChanged();
}

void FolioDocument::redraft() {
    const Pencil* shown = pencil();
    const MeasurementSet* set = measurementSet();
    drafted_ = shown != nullptr && set != nullptr ? draftGarment(*set, styleInForce(*shown))
                                                  : GarmentOutcome{};
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
