#pragma once

#include <QMenuBar>
#include <QUndoStack>

#include "core/store/working_copy.h"
#include "ui/window/theme.h"

namespace coutil {

// The menus and their actions. An action here is a wish; the window fulfils it.
class WindowMenus : public QMenuBar {
    Q_OBJECT

  public:
    WindowMenus(QUndoStack& undoStack, QWidget* parent = nullptr);

    void setFolioOpen(bool isOpen);      // greys what needs an open folio
    void setPatternThere(bool isThere);  // greys what needs panels to print

    QAction* newClient = nullptr;
    QAction* open = nullptr;
    QAction* openDemo = nullptr;
    QAction* save = nullptr;
    QAction* saveAs = nullptr;
    QAction* exportSheets = nullptr;
    QAction* print = nullptr;
    QAction* measuringSheet = nullptr;
    QAction* fittingSheet = nullptr;
    QAction* changeSheet = nullptr;
    QAction* close = nullptr;
    QAction* quit = nullptr;
    QAction* newGarment = nullptr;
    QAction* renameGarment = nullptr;
    QMenu* garment = nullptr;    // what is done with its revisions is added by the window
    QAction* project = nullptr;  // the tracings, at true scale
    QAction* fit = nullptr;
    QAction* wheelPans = nullptr;
    QAction* keys = nullptr;

  signals:
    void fileWanted(const QString& file);
    void clearRecentWanted();
    void recoverWanted(const coutil::Recoverable& found);
    void themeWanted(coutil::Theme theme);

  private:
    void buildFolioMenu();
    void buildEditMenu(QUndoStack& undoStack);
    void buildGarmentMenu();
    void buildViewMenu();
    void fillRecent(QMenu* menu);
    void fillWork(QMenu* menu);
};

}  // namespace coutil
