#pragma once

#include <QString>
#include <QUndoCommand>

#include "core/revision/folio.h"

namespace coutil {

class FolioDocument;

// One undo step: the folio before and after, and the words for it. Steps of one merge key and one
// run (typing in one field, one drag) become one; a step that ends where it began vanishes.
class FolioStep : public QUndoCommand {
  public:
    FolioStep(FolioDocument& document, Folio after, const QString& words, QString mergeKey,
              int mergeRun);

    [[nodiscard]] int id() const override;
    bool mergeWith(const QUndoCommand* other) override;
    void undo() override;
    void redo() override;

  private:
    FolioDocument& document_;
    Folio before_;
    Folio after_;
    QString mergeKey_;
    int mergeRun_ = 0;
};

}  // namespace coutil
