#include "ui/window/start_screen.h"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/window/line_icon.h"
#include "ui/window/recent_files.h"
#include "ui/window/recovery.h"
#include "ui/window/start_button.h"
#include "ui/window/start_drawing.h"

namespace coutil {

namespace {

constexpr int kColumnWidthPx = 480;
constexpr int kColumnGapPx = 48;

QLabel* heading(const QString& words, double size) {
    auto* label = new QLabel(words);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * size);
    font.setBold(true);
    label->setFont(font);
    return label;
}

QLabel* quietText(const QString& words) {
    auto* label = new QLabel(words);
    label->setWordWrap(true);
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

void clear(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        if (item->layout() != nullptr) clear(item->layout());
        delete item;
    }
}

QWidget* column(QLayout* content) {
    auto* widget = new QWidget;
    widget->setLayout(content);
    widget->setMaximumWidth(kColumnWidthPx);
    widget->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    return widget;
}

}  // namespace

StartScreen::StartScreen(QWidget* parent)
    : QWidget(parent), work_(new QVBoxLayout), recent_(new QVBoxLayout) {
    auto* lists = new QVBoxLayout;
    lists->setContentsMargins(0, 0, 0, 0);
    lists->addLayout(work_);
    lists->addLayout(recent_);
    lists->addStretch(1);
    work_->setSpacing(2);
    recent_->setSpacing(2);
    auto* page = new QWidget;
    auto* pageColumn = new QVBoxLayout(page);
    pageColumn->setContentsMargins(32, 56, 32, 24);
    pageColumn->setSpacing(32);
    auto* row = new QHBoxLayout;
    row->setSpacing(kColumnGapPx);
    pageColumn->addLayout(row);
    pageColumn->addWidget(new StartDrawing, 1);
    row->addStretch(1);
    row->addWidget(beginnings(), 8);
    row->addWidget(column(lists), 8);
    row->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(page);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(scroll);
    refresh();
}

QWidget* StartScreen::beginnings() {
    auto* list = new QVBoxLayout;
    list->setContentsMargins(0, 0, 0, 0);
    list->setSpacing(6);
    list->addWidget(heading(QStringLiteral("Coutil"), 2.4));
    list->addWidget(
        quietText(tr("Drafts boned bodices and corsets to measure and prints them "
                     "true to scale.")));
    list->addSpacing(20);
    auto* fresh = new StartButton(tr("Start a new client"),
                                  tr("Type her measurements; the panels draw themselves"),
                                  lineIcon(QStringLiteral("tape")));
    auto* open = new StartButton(tr("Open a folio"), tr("A client's file, or drop one here"),
                                 lineIcon(QStringLiteral("folder")));
    auto* demo = new StartButton(tr("Open the demo singer"),
                                 tr("An invented soprano of an operetta, to look around"),
                                 lineIcon(QStringLiteral("corset")));
    connect(fresh, &StartButton::clicked, this, &StartScreen::newWanted);
    connect(open, &StartButton::clicked, this, &StartScreen::openWanted);
    connect(demo, &StartButton::clicked, this, &StartScreen::demoWanted);
    list->addWidget(fresh);
    list->addWidget(open);
    list->addWidget(demo);
    list->addStretch(1);
    return column(list);
}

void StartScreen::refresh() {
    fillWork();
    fillRecent();
}

void StartScreen::fillWork() {
    clear(work_);
    const auto found = offeredWork();
    if (found.empty()) return;
    work_->addWidget(heading(tr("Unsaved work was found"), 1.15));
    work_->addWidget(quietText(tr("The program ended before it could be saved.")));
    for (const Recoverable& work : found) {
        const QString name = workName(work);
        auto* words = new QLabel(name);
        words->setWordWrap(true);
        auto* recover = new QPushButton(tr("Recover"));
        recover->setAccessibleName(tr("Recover %1").arg(name));
        auto* leave = new QPushButton(tr("Leave"));
        leave->setAccessibleName(tr("Leave %1").arg(name));
        leave->setToolTip(tr("It stays where it is; the Folio menu finds it again"));
        connect(recover, &QPushButton::clicked, this, [this, work] { emit recoverWanted(work); });
        connect(leave, &QPushButton::clicked, this, [this, work] { emit leaveWanted(work); });
        auto* row = new QHBoxLayout;
        row->setContentsMargins(0, 6, 0, 6);
        row->addWidget(words, 1);
        row->addWidget(recover);
        row->addWidget(leave);
        work_->addLayout(row);
    }
    work_->addSpacing(24);
}

void StartScreen::fillRecent() {
    clear(recent_);
    auto* head = new QHBoxLayout;
    head->addWidget(heading(tr("Recent folios"), 1.15), 1);
    recent_->addLayout(head);
    const QStringList files = recentFiles();
    if (files.isEmpty()) {
        recent_->addSpacing(6);
        recent_->addWidget(quietText(tr("Folios that you open or save will stand here.")));
        return;
    }
    auto* clearAll = new QPushButton(tr("Clear"));
    clearAll->setFlat(true);
    clearAll->setAccessibleName(tr("Clear the list of recent folios"));
    connect(clearAll, &QPushButton::clicked, this, &StartScreen::clearRecentWanted);
    head->addWidget(clearAll);
    for (const QString& file : files) {
        const QFileInfo info(file);
        const bool isThere = info.exists();
        const QString folder = QDir::toNativeSeparators(info.absolutePath());
        auto* button = new StartButton(info.completeBaseName(),
                                       isThere ? folder : tr("missing: %1").arg(folder),
                                       lineIcon(QStringLiteral("folio")));
        button->setEnabled(isThere);
        connect(button, &StartButton::clicked, this, [this, file] { emit fileWanted(file); });
        recent_->addWidget(button);
    }
}

}  // namespace coutil
