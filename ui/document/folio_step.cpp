#include "ui/document/folio_step.h"

#include <utility>

#include "ui/document/folio_document.h"

namespace coutil {

namespace {
// QUndoStack only offers steps with the same id for merging; -1 is never offered.
constexpr int kMergeableId = 1;
constexpr int kLonelyId = -1;
}  // namespace

FolioStep::FolioStep(FolioDocument& document, Folio after, const QString& words, QString mergeKey,
                     int mergeRun)
    : QUndoCommand(words),
      document_(document),
      before_(document.folio()),
      after_(std::move(after)),
      mergeKey_(std::move(mergeKey)),
      mergeRun_(mergeRun) {}

int FolioStep::id() const { return mergeKey_.isEmpty() ? kLonelyId : kMergeableId; }

bool FolioStep::mergeWith(const QUndoCommand* other) {
    const auto* later = dynamic_cast<const FolioStep*>(other);
    if (later == nullptr || later->mergeKey_ != mergeKey_ || later->mergeRun_ != mergeRun_) {
        return false;
    }
    after_ = later->after_;
    setText(later->text());
    setObsolete(after_ == before_);
    return true;
}

void FolioStep::undo() { document_.put(before_); }

void FolioStep::redo() { document_.put(after_); }

}  // namespace coutil
