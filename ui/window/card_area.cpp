#include "ui/window/card_area.h"

#include <QPainter>
#include <QScrollArea>

#include "ui/benches/bench.h"

namespace coutil {

namespace {
constexpr int kWidthPx = 372;
}  // namespace

CardArea::CardArea(QWidget* parent) : QStackedWidget(parent) {
    setFixedWidth(kWidthPx);
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
}

void CardArea::showBench(int index) { setCurrentIndex(index); }

void CardArea::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, 0, 0, height());
}

}  // namespace coutil
