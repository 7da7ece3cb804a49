#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include "core/revision/draft_garment.h"
#include "core/revision/folio.h"
#include "core/store/working_copy.h"

namespace coutil {

struct PencilChange;

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
    // On the table is one pencil of the garment or one confirmed revision; the other is nullptr.
    [[nodiscard]] const Pencil* pencil() const;
    [[nodiscard]] const Revision* revision() const;
    [[nodiscard]] const Style& style() const;  // in force there
    [[nodiscard]] const MeasurementSet* measurementSet() const;
    [[nodiscard]] int garmentIndex() const;
    // None of these is an undo step: nothing in the folio changes.
    void selectGarment(int index);
    void showPencil(const std::string& id);
    void showRevision(const std::string& digest);

    // What follows from what is on the table.
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
    // A change made elsewhere that may have begun a pencil, which is then shown; a run of merging
    // steps goes on in it.
    void take(const PencilChange& changed, const QString& words, const QString& mergeKey = {});
    void changeStyle(const Style& style, const QString& words, const QString& mergeKey = {});
    // The pencil on the table. Over a confirmed revision a pencil is begun from it, and the change
    // goes there.
    void changePencil(const std::function<void(Pencil&)>& edit, const QString& words,
                      const QString& mergeKey = {});
    void changeMeasurements(const MeasurementSet& set, const QString& words,
                            const QString& mergeKey = {});
    // A new set, a copy of that in force, taken today.
    void takeNewMeasurements(const QString& words);
    void endMerging();
    // A new pencil from a confirmed revision of this folio, shown at once. One undo step.
    void beginPencil(const std::string& parent, const QString& words);
    // Takes a folio in which something was confirmed: undo starts anew, since it never goes back
    // over ink. Shows the revision of that digest. The caller saves.
    void takeConfirmed(const Folio& after, const std::string& digest);

    // Writes what has changed to the working copy now, not after the short pause that lets fast
    // typing and dragging run free (kRecordPauseMs at most; endMerging() also does it).
    void recordNow();

  signals:
    void shownChanged();  // another garment, pencil or revision is on the table
    void pencilBegun(const QString& revision);         // from that digest, and shown
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
    void showNewest();  // when what was shown is gone
    void dropWorkingCopy();
    [[nodiscard]] std::optional<Problem> writeWorkingCopy();

    Folio folio_;
    bool isOpen_ = false;
    std::filesystem::path file_;
    std::optional<Folio> onDisk_;  // what file_ held when it was opened or saved here
    int garmentIndex_ = 0;
    std::string shownPencil_;    // id; both empty: the latest there is
    std::string shownRevision_;  // digest
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
