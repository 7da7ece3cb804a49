#include "ui/window/start_button.h"

#include <QIcon>
#include <QPainter>

#include "ui/fields/text_colours.h"

namespace coutil {

namespace {
constexpr int kPaddingPx = 10;
constexpr int kDrawingPx = 28;
constexpr int kUsualWidthPx = 380;
constexpr int kLeastWidthPx = 240;
}  // namespace

StartButton::StartButton(const QString& words, const QString& more, const QIcon& drawing,
                         QWidget* parent)
    : QAbstractButton(parent), more_(more) {
    setText(words);
    setIcon(drawing);
    setAccessibleName(words);
    setAccessibleDescription(more);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
}

QFont StartButton::wordsFont() const {
    QFont larger = font();
    larger.setPointSizeF(larger.pointSizeF() * 1.12);
    larger.setBold(true);
    return larger;
}

QFont StartButton::moreFont() const {
    QFont smaller = font();
    smaller.setPointSizeF(smaller.pointSizeF() * 0.95);
    return smaller;
}

QSize StartButton::sizeHint() const {
    const int lines = QFontMetrics(wordsFont()).height() + QFontMetrics(moreFont()).height() + 2;
    return {kUsualWidthPx, lines + 2 * kPaddingPx};
}

QSize StartButton::minimumSizeHint() const { return {kLeastWidthPx, sizeHint().height()}; }

void StartButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(1, 1, -1, -1);
    const QColor accent = palette().color(QPalette::Highlight);
    QColor veil = accent;
    veil.setAlphaF(isDown() ? 0.22F : 0.10F);
    if (isEnabled() && (underMouse() || isDown())) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(veil);
        painter.drawRoundedRect(frame, 6, 6);
    }
    if (hasFocus()) {
        painter.setPen(QPen(accent, 1.6));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(frame, 6, 6);
    }
    drawWords(painter);
}

void StartButton::drawWords(QPainter& painter) {
    const QRect drawing(kPaddingPx, (height() - kDrawingPx) / 2, kDrawingPx, kDrawingPx);
    icon().paint(&painter, drawing, Qt::AlignCenter, isEnabled() ? QIcon::Normal : QIcon::Disabled);
    const int left = drawing.right() + 14;
    const int room = width() - left - kPaddingPx;
    const QFontMetrics words(wordsFont());
    const QFontMetrics more(moreFont());
    painter.setFont(wordsFont());
    painter.setPen(
        palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, QPalette::WindowText));
    painter.drawText(left, kPaddingPx + words.ascent(),
                     words.elidedText(text(), Qt::ElideRight, room));
    painter.setFont(moreFont());
    painter.setPen(quietColour(palette()));
    painter.drawText(left, kPaddingPx + words.height() + 2 + more.ascent(),
                     more.elidedText(more_, Qt::ElideMiddle, room));
}

void StartButton::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void StartButton::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

}  // namespace coutil
