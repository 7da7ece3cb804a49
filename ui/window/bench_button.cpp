#include "ui/window/bench_button.h"

#include <QPainter>

namespace coutil {

namespace {
constexpr int kSidePx = 14;
constexpr int kHeightPx = 40;
constexpr int kLinePx = 3;
}  // namespace

BenchButton::BenchButton(const QString& words, QWidget* parent) : QAbstractButton(parent) {
    setText(words);
    setCheckable(true);
    setAutoExclusive(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize BenchButton::sizeHint() const {
    QFont bold = font();
    bold.setBold(true);  // the same width checked or not
    return {QFontMetrics(bold).horizontalAdvance(text()) + 2 * kSidePx, kHeightPx};
}

void BenchButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QColor accent = palette().color(QPalette::Highlight);
    if (underMouse() && !isChecked()) {
        QColor veil = accent;
        veil.setAlphaF(0.10F);
        painter.fillRect(rect(), veil);
    }
    QFont font = this->font();
    font.setBold(isChecked());
    painter.setFont(font);
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(rect(), Qt::AlignCenter, text());
    if (isChecked()) {
        painter.fillRect(QRect(kSidePx / 2, height() - kLinePx, width() - kSidePx, kLinePx),
                         accent);
    }
    if (hasFocus()) {
        painter.setPen(QPen(accent, 1.5));
        painter.setRenderHint(QPainter::Antialiasing);
        painter.drawRoundedRect(QRectF(rect()).adjusted(3, 6, -3, -6), 4, 4);
    }
}

void BenchButton::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void BenchButton::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

}  // namespace coutil
