#include "ui/window/card_area.h"

#include <QEvent>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <algorithm>

#include "ui/benches/bench.h"

namespace coutil {

namespace {
constexpr int kNarrowestPx = 372;
constexpr int kWidestPx = 470;
}  // namespace

CardArea::CardArea(QWidget* parent) : QStackedWidget(parent) {
    setFixedWidth(kNarrowestPx);
    setContentsMargins(1, 0, 0, 0);
}

void CardArea::addBench(Bench* bench) {
    if (bench->scrollsItself()) {
        addWidget(bench);
        return;
    }
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);  // Tab goes from field to field, which scrolls by itself
    scroll->setWidget(bench);
    addWidget(scroll);
    bench->installEventFilter(this);
    fitWidth();
}

// A unit or a language with longer figures widens the card for all benches alike, so that the table
// does not jump when the maker goes from bench to bench.
void CardArea::fitWidth() {
    int wanted = kNarrowestPx;
    for (const auto* scroll : findChildren<QScrollArea*>(Qt::FindDirectChildrenOnly)) {
        const int bar = scroll->verticalScrollBar()->sizeHint().width();
        wanted = std::max(wanted, scroll->widget()->minimumSizeHint().width() + bar + 2);
    }
    setFixedWidth(std::min(wanted, kWidestPx));
}

bool CardArea::eventFilter(QObject* watched, QEvent* event) {
    // The layout itself has still to take the request in.
    if (event->type() == QEvent::LayoutRequest) QTimer::singleShot(0, this, &CardArea::fitWidth);
    return QStackedWidget::eventFilter(watched, event);
}

void CardArea::showBench(int index) {
    setCurrentIndex(index);
    fitWidth();
}

void CardArea::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, 0, 0, height());
}

}  // namespace coutil
