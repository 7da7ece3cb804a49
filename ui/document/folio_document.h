#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <filesystem>
#include <memory>
#include <optional>

#include "core/revision/draft_garment.h"
#include "core/revision/folio.h"
#include "store/working_copy.h"

namespace coutil {

// The open folio and everything derived from it. Benches read it and change it only through
// change(); each change is one undo step (before, after, words), goes to the working copy, and
// redrafts at once.
class FolioDocument : public QObject {
    Q_OBJECT

  public:
    explicit FolioDocument(QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] const Folio& folio() const;
    [[nodiscard]] const std::filesystem::path& file() const;  // empty: never saved
    [[nodiscard]] bool isModified() const;
    [[nodiscard]] QUndoStack& undoStack();

    // The garment on the table and its measurement set; nullptr when the folio has none.
    [[nodiscard]] const Garment* garment() const;
    [[nodiscard]] const MeasurementSet* measurementSet() const;
    void selectGarment(int index);

    // What follows from the garment's pencil.
    [[nodiscard]] const GarmentOutcome& drafted() const;

    void open(Folio folio,
              std::filesystem::path file);  // replaces whatever was open; undo starts empty
    [[nodiscard]] std::optional<Problem> save(const std::filesystem::path& file);

    // One undo step. Steps with the same non-empty mergeKey that follow each other merge (typing in
    // one field, one slider drag); a step that ends where it began vanishes. endMerging() closes
    // such a run.
    void change(const Folio& after, const QString& words, const QString& mergeKey = {});
    void changeStyle(const Style& style, const QString& words, const QString& mergeKey = {});
    void changeMeasurements(const MeasurementSet& set, const QString& words,
                            const QString& mergeKey = {});
    void endMerging();

  signals:
    void opened();                                     // another folio, or none
    void folioChanged();                               // any value changed
    void draftedChanged();                             // drafted() is new
    void fileChanged();                                // file() or isModified() is new
    void storeFailed(const coutil::Problem& problem);  // the working copy could not be written

  private:
    friend class FolioStep;
    void put(const Folio& folio);
    void redraft();

    Folio folio_;
    bool isOpen_ = false;
    std::filesystem::path file_;
    int garmentIndex_ = 0;
    int mergeRun_ = 0;
    GarmentOutcome drafted_;
    QUndoStack undoStack_;
    std::shared_ptr<WorkingCopy> workingCopy_;
};

}  // namespace coutil
