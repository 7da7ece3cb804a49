#include "ui/timeline/timeline_drawing.h"

#include <QContextMenuEvent>
#include <QPainter>
#include <algorithm>

#include "ui/canvas/table_colours.h"
#include "ui/document/folio_document.h"
#include "ui/timeline/branch_line.h"
#include "ui/timeline/entry_button.h"

namespace coutil {

namespace {

int revisionNumber(const Garment& garment, const TimelineEntry& entry) {
    return entry.kind == TimelineKind::revision ? garment.revisions[entry.index]->number() : 0;
}

// Index of what is on the table; -1 where it is none of them.
int shownIn(const FolioDocument& document, const std::vector<TimelineEntry>& entries) {
    const Pencil* pencil = document.pencil();
    const Revision* revision = document.revision();
    const Garment* garment = document.garment();
    const auto place = std::ranges::find_if(entries, [&](const TimelineEntry& entry) {
        if (entry.kind == TimelineKind::pencil) return &garment->pencils[entry.index] == pencil;
        return entry.kind == TimelineKind::revision &&
               &*garment->revisions[entry.index] == revision;
    });
    return place == entries.end() ? -1 : static_cast<int>(place - entries.begin());
}

}  // namespace

TimelineDrawing::TimelineDrawing(FolioDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
    setFocusPolicy(Qt::NoFocus);
}

EntryButton& TimelineDrawing::button(int index) const {
    return *buttons_[static_cast<std::size_t>(index)];
}

int TimelineDrawing::rowHeight() const { return fontMetrics().height() + 6; }

void TimelineDrawing::forget() { drawn_.reset(); }

void TimelineDrawing::showDocument() {
    Drawn now;
    if (const Garment* garment = document_.garment()) {
        now = {garment->id, timelineOf(*garment), {}};
        for (const Pencil& pencil : garment->pencils) now.pencilNames.push_back(pencil.name);
    }
    if (now != drawn_) {
        drawn_ = std::move(now);
        rebuild();
    }
    markShown();
}

void TimelineDrawing::rebuild() {
    entries_ = drawn_->entries;
    while (buttons_.size() < entries_.size()) {
        buttons_.push_back(makeButton(static_cast<int>(buttons_.size())));
    }
    int year = 0;
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        const Garment& garment = *document_.garment();
        buttons_[i]->showEntry(entries_[i].kind, revisionNumber(garment, entries_[i]),
                               entryWords(garment, entries_[i], year));
        if (entries_[i].kind != TimelineKind::pencil) year = yearOf(entries_[i]);
    }
    layOut();
    shown_ = -1;
    for (int i = 0; i < static_cast<int>(entries_.size()); ++i) mark(i, false);
}

void TimelineDrawing::layOut() {
    std::vector<int> widths;
    for (std::size_t i = 0; i < entries_.size(); ++i) widths.push_back(buttons_[i]->wordsWidth());
    places_ = timelinePlaces(entries_, widths, rowHeight());
    resize(places_.size);
    setMinimumSize(places_.size);
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        const bool isUsed = i < entries_.size();
        buttons_[i]->setVisible(isUsed);
        if (!isUsed) continue;
        const QSize size = buttons_[i]->sizeHint();
        const QPoint dot = places_.dots[i];
        buttons_[i]->setGeometry(dot.x() - EntryButton::kDotMiddlePx, dot.y() - size.height() / 2,
                                 size.width(), size.height());
    }
    update();
    emit laidOut();
}

EntryButton* TimelineDrawing::makeButton(int index) {
    auto* button = new EntryButton(this);
    button->setToolTipSource([this, index] {
        return entryToolTip(document_.folio(), *document_.garment(),
                            entries_[static_cast<std::size_t>(index)]);
    });
    button->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(button, &EntryButton::chosen, this, [this, index] { emit chosen(index); });
    connect(button, &EntryButton::chosenBeside, this, [this, index] { emit chosenBeside(index); });
    connect(button, &QWidget::customContextMenuRequested, this,
            [this, button, index](const QPoint& at) {
                emit menuWanted(index, button->mapToGlobal(at));
            });
    connect(button, &EntryButton::stepped, this, [this, index](int by) { go(index + by); });
    connect(button, &EntryButton::ended, this,
            [this](bool isEnd) { go(isEnd ? static_cast<int>(entries_.size()) - 1 : 0); });
    connect(button, &EntryButton::entered, this, [this, index] {
        makeReachable(index);
        emit reached(index);
    });
    return button;
}

void TimelineDrawing::mark(int index, bool isShown) {
    const auto place = static_cast<std::size_t>(index);
    if (index < 0 || place >= entries_.size()) return;
    buttons_[place]->setShown(isShown);
    buttons_[place]->setAccessibleName(
        entryAccessibleName(document_.folio(), *document_.garment(), entries_[place], isShown));
}

void TimelineDrawing::markShown() {
    const int shown = shownIn(document_, entries_);
    if (shown == shown_) return;
    mark(shown_, false);
    shown_ = shown;
    mark(shown, true);
    if (shown < 0) return;
    makeReachable(shown);
    emit reached(shown);
}

void TimelineDrawing::go(int index) {
    if (index < 0 || index >= static_cast<int>(entries_.size())) return;
    button(index).setFocus(Qt::TabFocusReason);
}

void TimelineDrawing::makeReachable(int index) {
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        buttons_[i]->setFocusPolicy(static_cast<int>(i) == index ? Qt::StrongFocus
                                                                 : Qt::ClickFocus);
    }
}

// Fittings' lines lie under the inks, which run on through them.
void TimelineDrawing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool dark = isDark(palette());
    for (const bool isOfFittings : {true, false}) {
        for (std::size_t i = 0; i < entries_.size(); ++i) {
            const TimelineEntry& entry = entries_[i];
            if (!entry.parent || isOfFittings != (entry.kind == TimelineKind::fitting)) continue;
            painter.setPen(
                branchPen(entry.kind, revisionNumber(*document_.garment(), entry), dark));
            painter.drawPath(branchLine(places_.dots[*entry.parent], places_.dots[i]));
        }
    }
}

void TimelineDrawing::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) layOut();
}

}  // namespace coutil
