#include <QShortcut>

#include "ui/benches/compare_bench.h"
#include "ui/benches/fit_bench.h"
#include "ui/benches/print_bench.h"
#include "ui/benches/trace_bench.h"
#include "ui/canvas/table.h"
#include "ui/projecting/projector_screens.h"
#include "ui/projecting/projector_view.h"
#include "ui/timeline/history_actions.h"
#include "ui/window/confirming.h"
#include "ui/window/folio_files.h"
#include "ui/window/garment_line.h"
#include "ui/window/job_line.h"
#include "ui/window/main_window.h"
#include "ui/window/message_bar.h"
#include "ui/window/paper_dialog.h"
#include "ui/window/recent_files.h"
#include "ui/window/recovery.h"
#include "ui/window/settings.h"
#include "ui/window/start_screen.h"
#include "ui/window/status_line.h"
#include "ui/window/window_menus.h"
#include "ui/words/revision_words.h"

// What the parts of the window tell each other.
namespace coutil {

namespace {
constexpr char kWheelPansKey[] = "table/wheelPans";
constexpr int kMeasureBench = 0;
constexpr int kDraftBench = 1;
}  // namespace

void MainWindow::addBenchKeys() {
    for (int i = 0; i < benches_.size(); ++i) {
        // The bare figure is for hands off the fields; while typing it is a figure, so Alt helps.
        for (const auto& keys :
             {QKeySequence(Qt::Key_1 + i), QKeySequence(Qt::ALT | Qt::Key(Qt::Key_1 + i))}) {
            auto* key = new QShortcut(keys, this);
            connect(key, &QShortcut::activated, this, [this, i] { enterBench(i); });
        }
    }
}

void MainWindow::connectFiles() {
    connect(files_, &FolioFiles::failed, this, &MainWindow::fail);
    connect(files_, &FolioFiles::changedElsewhere, this, &MainWindow::warnOfOtherWriter);
    connect(files_, &FolioFiles::saved, this, [this] { messages_->takeBack(otherWriterText_); });
    connect(files_, &FolioFiles::told, this, [this](const QString& text) {
        messages_->say({text, false, {}, {}});
    });
    connect(files_, &FolioFiles::listsChanged, start_, &StartScreen::refresh);
    connect(files_, &FolioFiles::clientStarted, this, [this] { enterBench(kMeasureBench); });
    connect(files_, &FolioFiles::folioOpened, this, [this] {
        enterBench(document_.drafted().pattern && benches_.size() > kDraftBench ? kDraftBench
                                                                                : kMeasureBench);
    });
    connect(start_, &StartScreen::demoWanted, files_, &FolioFiles::openDemo);
    connect(start_, &StartScreen::newWanted, files_, &FolioFiles::startClient);
    connect(start_, &StartScreen::openWanted, files_, &FolioFiles::chooseAndOpen);
    connect(start_, &StartScreen::fileWanted, files_, &FolioFiles::openFile);
    connect(start_, &StartScreen::recoverWanted, files_, &FolioFiles::recover);
    connect(start_, &StartScreen::leaveWanted, this, [this](const Recoverable& found) {
        leaveWork(found);
        start_->refresh();
    });
    const auto clearRecent = [this] {
        clearRecentFiles();
        start_->refresh();
    };
    connect(start_, &StartScreen::clearRecentWanted, this, clearRecent);
    connect(menus_, &WindowMenus::clearRecentWanted, this, clearRecent);
    connect(&document_, &FolioDocument::opened, this, &MainWindow::showDocument);
    connect(&document_, &FolioDocument::storeFailed, this, &MainWindow::fail);
}

void MainWindow::connectMenus() {
    const auto on = [](QAction* action, auto* receiver, auto slot) {
        connect(action, &QAction::triggered, receiver, slot);
    };
    on(menus_->newClient, files_, [this] { files_->startClient(); });
    on(menus_->open, files_, [this] { files_->chooseAndOpen(); });
    on(menus_->openDemo, files_, [this] { files_->openDemo(); });
    on(menus_->save, files_, [this] { files_->save(); });
    on(menus_->saveAs, files_, [this] { files_->saveAs(); });
    on(menus_->exportSheets, this, [this] { enterPrintBench().exportPdf(); });
    on(menus_->print, this, [this] { enterPrintBench().print(false); });
    on(menus_->measuringSheet, this, [this] { showPaper(PaperKind::measuring); });
    on(menus_->fittingSheet, this, [this] { showPaper(PaperKind::fitting); });
    on(menus_->changeSheet, this, [this] { showPaper(PaperKind::change); });
    on(menus_->close, files_, [this] { files_->close(); });
    on(menus_->quit, this, [this] { close(); });
    on(menus_->newGarment, this, [this] { jobLine_->garments().addGarment(); });
    on(menus_->renameGarment, this, [this] { jobLine_->garments().startRename(); });
    on(menus_->fit, this, [this] { table_->fit(); });
    on(menus_->keys, this, [this] { showKeys(); });
    on(menus_->wheelPans, this, [this] {
        table_->setWheelPans(menus_->wheelPans->isChecked());
        openSettings()->setValue(kWheelPansKey, menus_->wheelPans->isChecked());
    });
    connect(menus_, &WindowMenus::fileWanted, files_, &FolioFiles::openFile);
    connect(menus_, &WindowMenus::recoverWanted, files_, &FolioFiles::recover);
    connect(menus_, &WindowMenus::themeWanted, this, [](Theme theme) {
        storeTheme(theme);
        applyTheme(theme);
    });
    connect(jobLine_, &JobLine::benchChosen, this, &MainWindow::enterBench);
}

PaperDialog& MainWindow::showPaper(PaperKind kind, const StateRef& older) {
    PaperDialog*& dialog = papers_.at(static_cast<std::size_t>(kind));
    if (dialog == nullptr) {
        dialog = new PaperDialog(document_, kind, this);
        connect(dialog, &PaperDialog::failed, this, &MainWindow::fail);
        connect(dialog, &PaperDialog::told, this, [this](const QString& text) {
            messages_->say({text, false, {}, {}});
        });
    }
    dialog->follow();
    if (kind == PaperKind::change) dialog->changedSince(older);
    dialog->show();
    dialog->raise();
    dialog->activateWindow();
    return *dialog;
}

void MainWindow::connectTimeline() {
    history_->fillGarmentMenu(menus_->garment);
    const auto tell = [this](const QString& text) { messages_->say({text, false, {}, {}}); };
    connect(history_, &HistoryActions::failed, this, &MainWindow::fail);
    connect(history_, &HistoryActions::told, this, tell);
    connect(history_, &HistoryActions::compareWanted, this, &MainWindow::compare);
    connect(history_, &HistoryActions::fittingChosen, this,
            [this](const QString& id) { fit_->showFitting(id.toStdString()); });
    connect(history_, &HistoryActions::confirmWanted, confirming_, &Confirming::confirmPencil);
    connect(confirming_, &Confirming::failed, this, &MainWindow::fail);
    connect(confirming_, &Confirming::told, this, tell);
    connect(confirming_, &Confirming::notSaved, this, [this](const QString& text) {
        messages_->say({text, true, tr("Save"), [this] { files_->save(); }});
    });
    connect(&document_, &FolioDocument::pencilBegun, this, &MainWindow::tellPencilBegun);
}

// Ink never changes: the maker hears where her change went, and may look at the revision again.
void MainWindow::tellPencilBegun(const QString& revision) {
    const Revision* parent = findRevision(document_.folio(), revision.toStdString());
    if (parent == nullptr) return;
    messages_->say({tr("A pencil begins from %1; the revision itself stays as it is.")
                        .arg(revisionName(*parent)),
                    false, tr("Show revision"),
                    [this, revision] { document_.showRevision(revision.toStdString()); }});
}

void MainWindow::connectFit() {
    connect(fit_, &FitBench::photoFilesWanted, this,
            [this] { fit_->attachPhotos(files_->ask().picturesToAttach(this)); });
    connect(fit_, &FitBench::fittingSheetWanted, this, [this] { showPaper(PaperKind::fitting); });
}

void MainWindow::connectCompare() {
    connect(compare_, &CompareBench::changeSheetWanted, this,
            [this](const StateRef& older) { showPaper(PaperKind::change, older); });
}

void MainWindow::connectProjector() {
    connect(menus_->project, &QAction::triggered, this, [this] { project(); });
    connect(trace_, &TraceBench::projectorWanted, this, [this] { project(); });
    // What lies under the projector follows what is on the table, like everything else.
    connect(&document_, &FolioDocument::draftedChanged, this, &MainWindow::showOnProjector);
}

void MainWindow::showOnProjector() {
    if (projector_ == nullptr || !projector_->isVisible()) return;
    const auto& tracings = document_.drafted().tracings;
    projector_->setTracings(tracings ? *tracings : std::vector<Tracing>(), document_.folio().unit);
}

ProjectorView& MainWindow::project() {
    if (projector_ == nullptr) projector_ = new ProjectorView(this);
    const auto& tracings = document_.drafted().tracings;
    projector_->setTracings(tracings ? *tracings : std::vector<Tracing>(), document_.folio().unit);
    if (QScreen* there = projectorScreen(screen())) projector_->showOn(*there);
    return *projector_;
}

void MainWindow::connectFoot() {
    connect(table_, &Table::hint, foot_, &StatusLine::showHint);
    connect(table_, &Table::pointerAt, this, &MainWindow::showPosition);
    connect(table_, &Table::viewChanged, this, &MainWindow::showZoom);
    connect(foot_, &StatusLine::problemsWanted, this, &MainWindow::pointAtProblems);
    connect(&document_, &FolioDocument::draftedChanged, this, &MainWindow::showProblemCount);
    connect(&document_, &FolioDocument::draftedChanged, this, &MainWindow::showWhetherPattern);
    connect(&document_, &FolioDocument::folioChanged, this, &MainWindow::showTitle);
    connect(&document_, &FolioDocument::fileChanged, this, &MainWindow::showTitle);
}

}  // namespace coutil
