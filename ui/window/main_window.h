#pragma once

#include <QList>
#include <QMainWindow>
#include <array>
#include <memory>

#include "core/problems/problem.h"
#include "ui/document/folio_document.h"
#include "ui/papers/document_papers.h"
#include "ui/window/ask_user.h"

class QStackedWidget;
class QBoxLayout;

namespace coutil {

class Bench;
class CardArea;
class CompareBench;
class Confirming;
class FitBench;
class FolioFiles;
class HistoryActions;
class JobLine;
class KeySheet;
class MessageBar;
class PaperDialog;
class PrintBench;
class ProjectorView;
class StartScreen;
class StatusLine;
class Table;
class TimelineStrip;
class TraceBench;
class WindowMenus;
struct StateRef;

// The window: one line at the top, the message bar, the table with the bench's card at its right,
// and the foot. Without an open folio the start screen takes the middle.
class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    explicit MainWindow(std::unique_ptr<AskUser> ask = std::make_unique<DialogAskUser>(),
                        QWidget* parent = nullptr);
    ~MainWindow() override;

    // Offers what an earlier window left unsaved; told in the message bar while a folio is open, on
    // the start screen otherwise.
    void offerUnsavedWork();
    void enterBench(int index);
    // Opens the dialog of a paper, of what is on the table; a change sheet since `older`, or since
    // the parent of what is shown.
    PaperDialog& showPaper(PaperKind kind, const StateRef& older = {});
    // Throws the tracings of what is on the table at true scale over a whole screen.
    ProjectorView& project();
    // Enters the Compare bench with both chosen.
    void compare(const StateRef& a, const StateRef& b);
    // As the window was when it was last closed, within the screen it is on; the first time, on a
    // small screen, all of it. Before show().
    void placeOnScreen();

    // The parts, for what is built around the window and for tests.
    [[nodiscard]] FolioDocument& document();
    [[nodiscard]] FolioFiles& files();
    [[nodiscard]] MessageBar& messages();
    [[nodiscard]] StartScreen& startScreen();
    [[nodiscard]] WindowMenus& menus();
    [[nodiscard]] Table& table();
    [[nodiscard]] TimelineStrip& timeline();
    [[nodiscard]] HistoryActions& history();
    [[nodiscard]] const QList<Bench*>& benches() const;
    [[nodiscard]] int benchIndex() const;  // -1: none, the start screen shows

  protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void layOut();
    void addBench(Bench* bench);
    void addBenchKeys();
    void connectFiles();
    void connectMenus();
    void connectFoot();
    void connectTimeline();
    void tellPencilBegun(const QString& revision);
    void connectFit();
    void connectCompare();
    void connectProjector();
    void showOnProjector();
    void showDocument();
    void showTitle();
    void showPosition(std::optional<QPointF> mm);
    void showZoom();
    void showProblemCount();
    void showWhetherPattern();
    [[nodiscard]] PrintBench& enterPrintBench();
    void pointAtProblems();
    void fail(const Problem& problem);
    void warnOfOtherWriter(const QString& file);
    void showKeys();

    FolioDocument document_;
    WindowMenus* menus_;
    JobLine* jobLine_;
    MessageBar* messages_;
    QStackedWidget* middle_;
    StartScreen* start_;
    Table* table_;
    QBoxLayout* tables_ = nullptr;  // the table, and what a bench has under it
    CardArea* card_;
    HistoryActions* history_;
    TimelineStrip* timeline_;
    StatusLine* foot_;
    FolioFiles* files_;
    Confirming* confirming_;
    KeySheet* keySheet_ = nullptr;
    std::array<PaperDialog*, 3> papers_{};  // by PaperKind; made when first wanted
    QString otherWriterText_;  // said while a save waits for the maker's word; else empty
    FitBench* fit_ = nullptr;  // four of the benches
    CompareBench* compare_ = nullptr;
    TraceBench* trace_ = nullptr;
    PrintBench* print_ = nullptr;
    ProjectorView* projector_ = nullptr;  // made when first wanted
    QList<Bench*> benches_;
    int benchIndex_ = -1;
};

}  // namespace coutil
