#include "ui/window/window_menus.h"

#include <QActionGroup>
#include <QDir>
#include <QFileInfo>

#include "ui/window/recent_files.h"
#include "ui/window/recovery.h"
#include "ui/window/settings.h"

namespace coutil {

namespace {

// A maker's own words are no menu text: an ampersand in them is one.
QString escaped(QString words) { return words.replace(QLatin1Char('&'), QLatin1String("&&")); }

}  // namespace

WindowMenus::WindowMenus(QUndoStack& undoStack, QWidget* parent) : QMenuBar(parent) {
    buildFolioMenu();
    buildEditMenu(undoStack);
    buildGarmentMenu();
    buildViewMenu();
    QMenu* help = addMenu(tr("&Help"));
    keys = help->addAction(tr("&Keys"));
    keys->setShortcuts({QKeySequence(Qt::Key_F1), QKeySequence(Qt::Key_Question),
                        QKeySequence(Qt::SHIFT | Qt::Key_Question)});
    setFolioOpen(false);
    setPatternThere(false);
}

void WindowMenus::buildFolioMenu() {
    QMenu* menu = addMenu(tr("&Folio"));
    newClient = menu->addAction(tr("&New client"), QKeySequence::New);
    open = menu->addAction(tr("&Open…"), QKeySequence::Open);
    QMenu* recent = menu->addMenu(tr("Open &recent"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(recent); });
    QMenu* work = menu->addMenu(tr("&Unsaved work"));
    connect(work, &QMenu::aboutToShow, this, [this, work] { fillWork(work); });
    openDemo = menu->addAction(tr("Open the &demo singer"));
    menu->addSeparator();
    save = menu->addAction(tr("&Save"), QKeySequence::Save);
    saveAs = menu->addAction(tr("Save &as…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
    menu->addSeparator();
    exportSheets =
        menu->addAction(tr("&Export sheets as PDF…"), QKeySequence(Qt::CTRL | Qt::Key_E));
    print = menu->addAction(tr("&Print…"), QKeySequence::Print);
    menu->addSeparator();
    measuringSheet = menu->addAction(tr("&Measuring sheet…"));
    fittingSheet = menu->addAction(tr("&Fitting sheet…"));
    changeSheet = menu->addAction(tr("C&hange sheet…"));
    menu->addSeparator();
    close = menu->addAction(tr("&Close"), QKeySequence::Close);
    quit = menu->addAction(tr("&Quit"), QKeySequence::Quit);
    quit->setMenuRole(QAction::QuitRole);
}

void WindowMenus::buildEditMenu(QUndoStack& undoStack) {
    QMenu* menu = addMenu(tr("&Edit"));
    QAction* undo = menu->addAction(tr("&Undo"));
    QAction* redo = menu->addAction(tr("&Redo"));
    undo->setShortcuts(QKeySequence::Undo);
    redo->setShortcuts(QKeySequence::Redo);
    undo->setEnabled(false);
    redo->setEnabled(false);
    connect(undo, &QAction::triggered, &undoStack, &QUndoStack::undo);
    connect(redo, &QAction::triggered, &undoStack, &QUndoStack::redo);
    connect(&undoStack, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
    connect(&undoStack, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
    connect(&undoStack, &QUndoStack::undoTextChanged, undo, [undo](const QString& words) {
        undo->setText(words.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(escaped(words)));
    });
    connect(&undoStack, &QUndoStack::redoTextChanged, redo, [redo](const QString& words) {
        redo->setText(words.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(escaped(words)));
    });
}

void WindowMenus::buildGarmentMenu() {
    garment = addMenu(tr("&Garment"));
    newGarment = garment->addAction(tr("New &garment"));
    renameGarment = garment->addAction(tr("Re&name garment"), QKeySequence(Qt::Key_F2));
    garment->addSeparator();
}

void WindowMenus::buildViewMenu() {
    QMenu* menu = addMenu(tr("&View"));
    fit = menu->addAction(tr("&Fit everything in"), QKeySequence(Qt::CTRL | Qt::Key_0));
    project = menu->addAction(tr("&Projector…"), QKeySequence(Qt::Key_F9));
    wheelPans = menu->addAction(tr("&Wheel pans instead of zooming"));
    wheelPans->setCheckable(true);
    wheelPans->setChecked(openSettings()->value("table/wheelPans", false).toBool());
    menu->addSeparator();
    QMenu* themes = menu->addMenu(tr("&Theme"));
    auto* group = new QActionGroup(this);
    const auto add = [&](const QString& words, Theme theme) {
        QAction* action = themes->addAction(words);
        action->setCheckable(true);
        action->setChecked(storedTheme() == theme);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, theme] { emit themeWanted(theme); });
    };
    add(tr("&System"), Theme::system);
    add(tr("&Light"), Theme::light);
    add(tr("&Dark"), Theme::dark);
}

void WindowMenus::setFolioOpen(bool isOpen) {
    for (QAction* action : {save, saveAs, measuringSheet, close, newGarment, renameGarment, fit}) {
        action->setEnabled(isOpen);
    }
}

void WindowMenus::setPatternThere(bool isThere) {
    exportSheets->setEnabled(isThere);
    print->setEnabled(isThere);
    project->setEnabled(isThere);
    fittingSheet->setEnabled(isThere);
    changeSheet->setEnabled(isThere);
}

void WindowMenus::fillRecent(QMenu* menu) {
    menu->clear();
    for (const QString& file : recentFiles()) {
        QAction* action = menu->addAction(escaped(QDir::toNativeSeparators(file)));
        action->setEnabled(QFileInfo::exists(file));
        connect(action, &QAction::triggered, this, [this, file] { emit fileWanted(file); });
    }
    if (menu->isEmpty()) {
        menu->addAction(tr("None yet"))->setEnabled(false);
        return;
    }
    menu->addSeparator();
    menu->addAction(tr("&Clear this list"), this, &WindowMenus::clearRecentWanted);
}

void WindowMenus::fillWork(QMenu* menu) {
    menu->clear();
    for (const Recoverable& found : unsavedWork()) {
        connect(menu->addAction(escaped(workName(found))), &QAction::triggered, this,
                [this, found] { emit recoverWanted(found); });
    }
    if (menu->isEmpty()) menu->addAction(tr("None was found"))->setEnabled(false);
}

}  // namespace coutil
