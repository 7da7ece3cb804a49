#pragma once

#include <QAction>
#include <QObject>
#include <optional>

#include "core/comparison/alterations_between.h"
#include "core/problems/problem.h"
#include "core/revision/timeline.h"

class QMenu;

namespace coutil {

class FolioDocument;

// What can be done with the revisions and pencils of the garment: as actions for the one on the
// table, and as a menu for any entry of the timeline.
class HistoryActions : public QObject {
    Q_OBJECT

  public:
    explicit HistoryActions(FolioDocument& document, QObject* parent = nullptr);

    // For what is on the table; greyed where it is of the wrong kind.
    QAction* confirm = nullptr;
    QAction* beginPencil = nullptr;
    QAction* copyPencil = nullptr;
    QAction* namePencil = nullptr;
    QAction* rubOut = nullptr;
    QAction* startGarment = nullptr;

    void fillGarmentMenu(QMenu* menu);
    void fillEntryMenu(QMenu* menu, const TimelineEntry& entry);

    // Puts the entry on the table; of a fitting what was tried on.
    void show(const TimelineEntry& entry);
    // Wants the entry compared with what is on the table, the earlier one as A. Says so where there
    // is nothing to compare.
    void compareWithShown(const TimelineEntry& entry);

  signals:
    void confirmWanted();  // of the pencil on the table
    void compareWanted(const coutil::StateRef& a, const coutil::StateRef& b);
    void nameWanted(const QString& pencil);  // id
    void fittingChosen(const QString& fitting);
    void failed(const coutil::Problem& problem);
    void told(const QString& text);

  private:
    void buildActions();
    void showWhatCanBeDone();
    void addPencilWishes(QMenu* menu, const TimelineEntry& entry);
    void addRevisionWishes(QMenu* menu, const TimelineEntry& entry);
    void fillCompareMenu(QMenu* menu, const StateRef& one);
    void compare(const StateRef& one, const StateRef& other);
    void report(const std::optional<Problem>& problem);
    [[nodiscard]] StateRef stateOf(const TimelineEntry& entry) const;
    [[nodiscard]] StateRef shownState() const;

    FolioDocument& document_;
};

}  // namespace coutil
