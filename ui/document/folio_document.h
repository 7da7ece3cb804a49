#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>
#include <filesystem>
#include <memory>
#include <optional>

#include "core/revision/draft_garment.h"
#include "core/revision/folio.h"
#include "core/store/working_copy.h"

namespace coutil {

// The open folio and everything derived from it. Benches read it and change it only through
// change(); each change is one undo step (before, after, words), goes to the working copy, and
// redrafts at once.
class FolioDocument : public QObject {
    Q_OBJECT

  public:
    explicit FolioDocument(QObject* parent = nullptr);
    ~FolioDocument() override;  // unsaved work stays in its working copy, to be recovered

    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] const Folio& folio() const;
    [[nodiscard]] const std::filesystem::path& file() const;  // empty: never saved
    [[nodiscard]] bool isModified() const;
    [[nodiscard]] QUndoStack& undoStack();

    // The garment on the table and its measurement set; nullptr when the folio has none.
    [[nodiscard]] const Garment* garment() const;
    [[nodiscard]] const Pencil* pencil() const;  // the one worked on; nullptr: all is confirmed
    [[nodiscard]] const MeasurementSet* measurementSet() const;
    [[nodiscard]] int garmentIndex() const;
    void selectGarment(int index);  // not an undo step: nothing in the folio changes

    // What follows from the garment's pencil.
    [[nodiscard]] const GarmentOutcome& drafted() const;
    // The last outcome of this garment that had a pattern: what a table goes on showing, as not in
    // force, while drafted() has only problems. Without a pattern when there never was one.
    [[nodiscard]] const GarmentOutcome& lastGoodDraft() const;

    void open(Folio folio,
              std::filesystem::path file);  // replaces whatever was open; undo starts empty
    // The same for work found after a crash: it counts as modified until it is saved.
    void openRecovered(Folio folio, std::filesystem::path original);
    void close();  // nothing is open afterwards; unsaved work and its working copy are dropped
    [[nodiscard]] std::optional<Problem> save(const std::filesystem::path& file);
    // Whether another program wrote something else into file() since it was opened or saved here;
    // false when nothing is there (any more). Reads the file.
    [[nodiscard]] bool hasFileChanged() const;

    // One undo step. Steps with the same non-empty mergeKey that follow each other merge (typing in
    // one field, one slider drag); a step that ends where it began vanishes. endMerging() closes
    // such a run.
    void change(const Folio& after, const QString& words, const QString& mergeKey = {});
    void changeStyle(const Style& style, const QString& words, const QString& mergeKey = {});
    void changeMeasurements(const MeasurementSet& set, const QString& words,
                            const QString& mergeKey = {});
    void endMerging();

    // Writes what has changed to the working copy now, not after the short pause that lets fast
    // typing and dragging run free (kRecordPauseMs at most; endMerging() also does it).
    void recordNow();

  signals:
    void opened();                                     // another folio, or none
    void folioChanged();                               // any value changed
    void draftedChanged();                             // drafted() is new
    void fileChanged();                                // file() or isModified() is new
    void storeFailed(const coutil::Problem& problem);  // the working copy could not be written

  private:
    friend class FolioStep;
    void put(const Folio& folio);
    void show(Folio folio, std::filesystem::path file);
    void redraft();
    void dropWorkingCopy();
    [[nodiscard]] std::optional<Problem> writeWorkingCopy();

    Folio folio_;
    bool isOpen_ = false;
    std::filesystem::path file_;
    std::optional<Folio> onDisk_;  // what file_ held when it was opened or saved here
    int garmentIndex_ = 0;
    int mergeRun_ = 0;
    GarmentOutcome drafted_;
    GarmentOutcome lastGoodDraft_;
    std::string lastGoodGarment_;
    QUndoStack undoStack_;
    QTimer recordTimer_;
    std::shared_ptr<WorkingCopy> workingCopy_;
    bool hasStoreFailed_ = false;
};

}  // namespace coutil
