#include "ui/window/main_window.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMimeData>
#include <QScreen>
#include <QStackedWidget>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "ui/benches/compare_bench.h"
#include "ui/benches/draft_bench.h"
#include "ui/benches/fit_bench.h"
#include "ui/benches/fit_photo.h"
#include "ui/benches/measure_bench.h"
#include "ui/benches/print_bench.h"
#include "ui/benches/trace_bench.h"
#include "ui/canvas/table.h"
#include "ui/document/state_folder.h"
#include "ui/timeline/history_actions.h"
#include "ui/timeline/timeline_strip.h"
#include "ui/window/card_area.h"
#include "ui/window/confirming.h"
#include "ui/window/folio_files.h"
#include "ui/window/garment_line.h"
#include "ui/window/job_line.h"
#include "ui/window/key_sheet.h"
#include "ui/window/message_bar.h"
#include "ui/window/recovery.h"
#include "ui/window/settings.h"
#include "ui/window/start_screen.h"
#include "ui/window/status_line.h"
#include "ui/window/window_menus.h"
#include "ui/window/window_place.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr char kGeometryKey[] = "window/geometry";
constexpr int kMeasureBench = 0;
constexpr int kDraftBench = 1;
constexpr QSize kUsualSize{1280, 800};

QString droppedFolio(const QMimeData* data) {
    for (const QUrl& url : data->urls()) {
        if (url.isLocalFile() && QFileInfo(url.toLocalFile()).isFile()) return url.toLocalFile();
    }
    return {};
}

// Another program has confirmed in the file since; under another name both are kept.
bool wouldLoseRevision(const Problem& problem) {
    return problem.code == ProblemCode::fileUnwritable &&
           std::ranges::find(problem.figures, "revision", &Figure::name) != problem.figures.end();
}

}  // namespace

MainWindow::MainWindow(std::unique_ptr<AskUser> ask, QWidget* parent)
    : QMainWindow(parent),
      menus_(new WindowMenus(document_.undoStack())),
      jobLine_(new JobLine(document_, menus_)),
      messages_(new MessageBar),
      middle_(new QStackedWidget),
      start_(new StartScreen),
      table_(new Table),
      card_(new CardArea),
      history_(new HistoryActions(document_, this)),
      timeline_(new TimelineStrip(document_, *history_)),
      foot_(new StatusLine),
      files_(new FolioFiles(document_, std::move(ask), this)),
      confirming_(new Confirming(document_, *files_, this)) {
    layOut();
    addBench(new MeasureBench(document_, *table_, this));
    addBench(new DraftBench(document_, *table_, this));
    fit_ = new FitBench(document_, *table_, this);
    addBench(fit_);
    compare_ = new CompareBench(document_, *table_, this);
    addBench(compare_);
    trace_ = new TraceBench(document_, *table_, this);
    addBench(trace_);
    print_ = new PrintBench(document_, *table_, this);
    addBench(print_);
    addBenchKeys();
    connectFiles();
    connectMenus();
    connectFoot();
    connectTimeline();
    connectFit();
    connectCompare();
    connectProjector();
    setAcceptDrops(true);
    resize(kUsualSize);
    table_->setWheelPans(menus_->wheelPans->isChecked());
    expireLeftWork();
    showDocument();
}

MainWindow::~MainWindow() {
    document_.disconnect(this);
    delete takeCentralWidget();  // before the document that its fields still write to
}

void MainWindow::layOut() {
    auto* workbench = new QWidget;
    auto* row = new QHBoxLayout(workbench);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    tables_ = new QVBoxLayout;
    tables_->setSpacing(1);
    tables_->addWidget(table_, 1);
    row->addLayout(tables_, 1);
    row->addWidget(card_);
    middle_->addWidget(start_);
    middle_->addWidget(workbench);
    auto* all = new QWidget;
    auto* column = new QVBoxLayout(all);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(jobLine_);
    column->addWidget(messages_);
    column->addWidget(middle_, 1);
    column->addWidget(timeline_);
    column->addWidget(foot_);
    setCentralWidget(all);
}

void MainWindow::addBench(Bench* bench) {
    benches_.append(bench);
    card_->addBench(bench);
    if (QWidget* under = bench->underTable()) tables_->addWidget(under, 1);
    jobLine_->addBench(bench->benchName(), static_cast<int>(benches_.size()));
    connect(bench, &Bench::besideTableWanted, this, [this](bool isBeside) {
        tables_->setDirection(isBeside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    });
    connect(bench, &Bench::hint, foot_, &StatusLine::showHint);
    connect(bench, &Bench::message, this, [this](const QString& text, bool isError) {
        messages_->say({text, isError, {}, {}});
    });
}

void MainWindow::offerUnsavedWork() {
    start_->refresh();
    if (!document_.isOpen()) return;
    for (const Recoverable& found : offeredWork()) {
        messages_->say({tr("Unsaved work was found: %1.").arg(workName(found)), false,
                        tr("Recover"), [this, found] { files_->recover(found); }});
    }
}

void MainWindow::enterBench(int index) {
    if (index < 0 || index >= benches_.size() || !document_.isOpen()) return;
    if (index != benchIndex_) {
        if (benchIndex_ >= 0) benches_[benchIndex_]->leave();
        document_.endMerging();
        benchIndex_ = index;
        foot_->showHint(QString());
        card_->showBench(index);
        jobLine_->showBench(index);
    }
    benches_[index]->enter();
}

void MainWindow::showDocument() {
    const bool isOpen = document_.isOpen();
    messages_->dismissAll();
    menus_->setFolioOpen(isOpen);
    middle_->setCurrentIndex(isOpen ? 1 : 0);
    foot_->setVisible(isOpen);
    if (!isOpen) {
        if (benchIndex_ >= 0) benches_[benchIndex_]->leave();
        benchIndex_ = -1;
        start_->refresh();
    }
    showTitle();
    showProblemCount();
    showWhetherPattern();
}

void MainWindow::showTitle() {
    if (!document_.isOpen()) {
        setWindowTitle(QStringLiteral("Coutil"));
        setWindowModified(false);
        return;
    }
    QString name = QString::fromStdString(document_.folio().client);
    if (name.isEmpty()) name = fileNameOf(document_.file().stem());
    if (name.isEmpty()) name = tr("New client");
    setWindowTitle(QStringLiteral("%1[*] – Coutil")
                       .arg(name.replace(QLatin1String("[*]"), QLatin1String("[*][*]"))));
    setWindowModified(document_.isModified());
}

void MainWindow::showPosition(std::optional<QPointF> mm) {
    if (!mm) {
        foot_->showPosition(QString());
        return;
    }
    const QPointF place = *mm - table_->scene().rulerZero;
    const LengthUnit unit = document_.folio().unit;
    foot_->showPosition(tr("%1, %2", "position: across, up")
                            .arg(lengthText(place.x(), unit), lengthText(place.y(), unit)));
}

void MainWindow::showZoom() {
    const double truePxPerMm = logicalDpiX() / millimetresIn(LengthUnit::inch);
    foot_->showZoom(100 * table_->view().pxPerMm() / truePxPerMm);
}

void MainWindow::showProblemCount() {
    const auto& problems = document_.drafted().problems;
    const auto count = std::ranges::count_if(
        problems, [](const Problem& p) { return p.severity != Severity::note; });
    foot_->showProblems(static_cast<int>(count));
}

void MainWindow::showWhetherPattern() {
    menus_->setPatternThere(document_.isOpen() && document_.drafted().pattern.has_value());
}

void MainWindow::compare(const StateRef& a, const StateRef& b) {
    compare_->compare(a, b);
    enterBench(static_cast<int>(benches_.indexOf(compare_)));
}

// A page that is open there stays open.
PrintBench& MainWindow::enterPrintBench() {
    const auto index = static_cast<int>(benches_.indexOf(print_));
    if (index != benchIndex_) enterBench(index);
    return *print_;
}

void MainWindow::pointAtProblems() {
    const bool isOfBody = !document_.drafted().body;
    enterBench(isOfBody ? kMeasureBench
                        : std::min<int>(kDraftBench, static_cast<int>(benches_.size()) - 1));
}

void MainWindow::fail(const Problem& problem) {
    const QString said = problemSentence(problem, document_.folio().unit);
    if (!wouldLoseRevision(problem)) {
        messages_->say({said, true, {}, {}});
        return;
    }
    otherWriterText_ = said;
    messages_->say({said, true, tr("Save as…"), [this] { files_->saveAs(); }});
}

// Nothing is written until the maker has chosen.
void MainWindow::warnOfOtherWriter(const QString& file) {
    otherWriterText_ =
        tr("Not saved: another program has changed %1 since it was opened here. Save under another "
           "name to keep both, or save anyway and lose what the other program wrote.")
            .arg(file);
    messages_->say({otherWriterText_, true, tr("Save as…"), [this] { files_->saveAs(); },
                    tr("Save anyway"), [this] { files_->saveAnyway(); }});
}

void MainWindow::showKeys() {
    if (keySheet_ == nullptr) keySheet_ = new KeySheet(this);
    if (keySheet_->isVisible()) {
        keySheet_->hide();
        return;
    }
    keySheet_->show();
    keySheet_->raise();
    keySheet_->activateWindow();
}

FolioDocument& MainWindow::document() { return document_; }
FolioFiles& MainWindow::files() { return *files_; }
MessageBar& MainWindow::messages() { return *messages_; }
StartScreen& MainWindow::startScreen() { return *start_; }
WindowMenus& MainWindow::menus() { return *menus_; }
Table& MainWindow::table() { return *table_; }
TimelineStrip& MainWindow::timeline() { return *timeline_; }
HistoryActions& MainWindow::history() { return *history_; }
const QList<Bench*>& MainWindow::benches() const { return benches_; }
int MainWindow::benchIndex() const { return benchIndex_; }

void MainWindow::placeOnScreen() {
    const bool wasPlaced = restoreGeometry(openSettings()->value(kGeometryKey).toByteArray());
    const QRect screenRoom = screen()->availableGeometry();
    if (isMaximized()) return;
    setGeometry(withinScreen(geometry(), screenRoom));
    if (!wasPlaced && isSmallScreen(screenRoom.size())) {
        setWindowState(windowState() | Qt::WindowMaximized);
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->mayLeave()) {
        event->ignore();
        return;
    }
    openSettings()->setValue(kGeometryKey, saveGeometry());
    document_.close();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFolio(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    const QString file = droppedFolio(event->mimeData());
    if (isPictureFile(file) && document_.isOpen()) {
        enterBench(static_cast<int>(benches_.indexOf(fit_)));
        fit_->attachPhotos({file});
    } else {
        files_->openFile(file);
    }
}

}  // namespace coutil
