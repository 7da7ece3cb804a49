#include "ui/timeline/timeline_strip.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>

#include "ui/canvas/table_colours.h"
#include "ui/document/folio_document.h"
#include "ui/timeline/entry_button.h"
#include "ui/timeline/history_actions.h"
#include "ui/timeline/history_steps.h"
#include "ui/timeline/timeline_drawing.h"

namespace coutil {

namespace {
constexpr int kMostRows = 3;  // more are scrolled to
constexpr int kAroundPx = 4;
constexpr int kSeenAroundPx = 60;
constexpr int kNameWidthPx = 170;
}  // namespace

TimelineStrip::TimelineStrip(FolioDocument& document, HistoryActions& actions, QWidget* parent)
    : QWidget(parent),
      document_(document),
      actions_(actions),
      drawing_(new TimelineDrawing(document)),
      area_(new QScrollArea),
      confirm_(new QPushButton(tr("Confirm…"))),
      name_(new QLineEdit(drawing_)) {
    setAccessibleName(tr("Timeline"));
    layOut();
    connectDrawing();
    connect(confirm_, &QPushButton::clicked, actions_.confirm, &QAction::trigger);
    connect(&actions_, &HistoryActions::nameWanted, this, &TimelineStrip::startNaming);
    connect(name_, &QLineEdit::editingFinished, this, &TimelineStrip::takeName);
    connect(&document_, &FolioDocument::folioChanged, this, &TimelineStrip::showDocument);
    connect(&document_, &FolioDocument::shownChanged, this, &TimelineStrip::showDocument);
    connect(&document_, &FolioDocument::opened, this, [this] {
        drawing_->forget();
        showDocument();
    });
    showDocument();
}

TimelineStrip::~TimelineStrip() { document_.disconnect(this); }

void TimelineStrip::layOut() {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(4, 1, 8, 0);
    row->setSpacing(8);
    area_->setWidget(drawing_);
    area_->setFrameShape(QFrame::NoFrame);
    area_->setFocusPolicy(Qt::NoFocus);
    area_->viewport()->setAutoFillBackground(false);
    drawing_->setAutoFillBackground(false);
    area_->viewport()->installEventFilter(this);
    row->addWidget(area_, 1);
    confirm_->setToolTip(tr("Go over the pencil in ink: dated, numbered, never changed again"));
    row->addWidget(confirm_, 0, Qt::AlignVCenter);
    name_->hide();
    name_->setAccessibleName(tr("Name of the pencil"));
    name_->setPlaceholderText(tr("Name of the pencil"));
    name_->installEventFilter(this);
}

void TimelineStrip::connectDrawing() {
    connect(drawing_, &TimelineDrawing::chosen, this, [this](int index) {
        actions_.show(drawing_->entries()[static_cast<std::size_t>(index)]);
    });
    connect(drawing_, &TimelineDrawing::chosenBeside, this, [this](int index) {
        actions_.compareWithShown(drawing_->entries()[static_cast<std::size_t>(index)]);
    });
    connect(drawing_, &TimelineDrawing::menuWanted, this, &TimelineStrip::popUpMenu);
    connect(drawing_, &TimelineDrawing::reached, this, &TimelineStrip::scrollTo);
    connect(drawing_, &TimelineDrawing::laidOut, this, &TimelineStrip::fitHeight);
}

void TimelineStrip::showDocument() {
    setVisible(document_.isOpen());
    confirm_->setVisible(document_.pencil() != nullptr);
    stopNaming();
    drawing_->showDocument();
}

void TimelineStrip::fitHeight() {
    const int rows = std::clamp(drawing_->rows(), 1, kMostRows);
    const bool scrolls = drawing_->width() > area_->viewport()->width();
    const int bar = scrolls ? area_->horizontalScrollBar()->sizeHint().height() : 0;
    setFixedHeight(std::max(rows * drawing_->rowHeight(), confirm_->sizeHint().height()) + bar +
                   kAroundPx);
}

void TimelineStrip::scrollTo(int index) {
    area_->ensureWidgetVisible(&drawing_->button(index), kSeenAroundPx, 0);
}

void TimelineStrip::popUpMenu(int index, const QPoint& globalPosition) {
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    actions_.fillEntryMenu(menu, drawing_->entries()[static_cast<std::size_t>(index)]);
    menu->popup(globalPosition);
}

void TimelineStrip::startNaming(const QString& pencil) {
    const Garment* garment = document_.garment();
    const Pencil* named = garment == nullptr ? nullptr : findPencil(*garment, pencil.toStdString());
    if (named == nullptr) return;
    const auto place = std::ranges::find_if(drawing_->entries(), [&](const TimelineEntry& entry) {
        return entry.kind == TimelineKind::pencil && &garment->pencils[entry.index] == named;
    });
    if (place == drawing_->entries().end()) return;
    named_ = named->id;
    EntryButton& button = drawing_->button(static_cast<int>(place - drawing_->entries().begin()));
    name_->setText(QString::fromStdString(named->name));
    const int height = name_->sizeHint().height();
    const int left = button.x() + EntryButton::kDotMiddlePx;
    const int room = left + kNameWidthPx;
    if (drawing_->width() < room) drawing_->setMinimumWidth(room);
    drawing_->resize(std::max(drawing_->width(), room), drawing_->height());
    name_->setGeometry(left, button.geometry().center().y() - height / 2, kNameWidthPx, height);
    name_->show();
    name_->raise();
    name_->setFocus(Qt::OtherFocusReason);
    name_->selectAll();
    area_->ensureWidgetVisible(name_);
}

void TimelineStrip::takeName() {
    if (named_.empty()) return;
    const std::string pencil = named_;
    const QString name = name_->text();
    stopNaming();
    namePencil(document_, pencil, name);
}

void TimelineStrip::stopNaming() {
    if (named_.empty()) return;
    named_.clear();
    const bool hadFocus = name_->hasFocus();
    name_->hide();
    if (hadFocus && drawing_->shownIndex() >= 0) {
        drawing_->button(drawing_->shownIndex()).setFocus(Qt::OtherFocusReason);
    }
}

// The wheel moves along the line, whichever way it turns.
bool TimelineStrip::eventFilter(QObject* watched, QEvent* event) {
    if (watched == name_ && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        stopNaming();
        return true;
    }
    if (watched == area_->viewport() && event->type() == QEvent::Wheel &&
        drawing_->height() <= area_->viewport()->height()) {
        const QPoint turned = static_cast<QWheelEvent*>(event)->angleDelta();
        QScrollBar* bar = area_->horizontalScrollBar();
        bar->setValue(bar->value() - (turned.x() != 0 ? turned.x() : turned.y()));
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void TimelineStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), tableColours(isDark(palette())).paper);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, 0, width(), 0);
}

void TimelineStrip::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitHeight();
}

void TimelineStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitHeight();
}

}  // namespace coutil
