#include "ui/timeline/entry_button.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>
#include <utility>

#include "ui/canvas/table_colours.h"

namespace coutil {

namespace {

constexpr int kWordsFromPx = 20;
constexpr int kBetweenWordsPx = 5;
constexpr int kAfterWordsPx = 5;
constexpr double kDotRadiusPx = 4.5;
constexpr double kHaloRadiusPx = 7.5;
constexpr double kCrossPx = 4;

QPainterPath wave(QPointF middle) {
    QPainterPath path(middle + QPointF(-8, 1));
    path.cubicTo(middle + QPointF(-5, -6), middle + QPointF(-3, -6), middle + QPointF(0, 0));
    path.cubicTo(middle + QPointF(3, 6), middle + QPointF(5, 6), middle + QPointF(8, -1));
    return path;
}

}  // namespace

EntryButton::EntryButton(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::ClickFocus);
    setCursor(Qt::PointingHandCursor);
    // Pressed by an assistive program; mouse and keys come by their own ways.
    connect(this, &QAbstractButton::clicked, this, &EntryButton::chosen);
}

void EntryButton::showEntry(TimelineKind kind, int revisionNumber, const EntryWords& words) {
    kind_ = kind;
    number_ = revisionNumber;
    words_ = words;
    setText(words.day.isEmpty() ? words.name : words.name + QLatin1Char(' ') + words.day);
    update();
}

void EntryButton::setShown(bool isShown) {
    if (isShown_ == isShown) return;
    isShown_ = isShown;
    update();
}

void EntryButton::setToolTipSource(std::function<QString()> words) { toolTip_ = std::move(words); }

QString EntryButton::toolTipText() const { return toolTip_ ? toolTip_() : QString(); }

// As wide shown or not: the strip does not jump.
QFont EntryButton::nameFont() const {
    QFont bold = font();
    bold.setBold(true);
    return bold;
}

int EntryButton::wordsWidth() const {
    const int day =
        words_.day.isEmpty() ? 0 : kBetweenWordsPx + fontMetrics().horizontalAdvance(words_.day);
    return QFontMetrics(nameFont()).horizontalAdvance(words_.name) + day + kAfterWordsPx;
}

QSize EntryButton::sizeHint() const {
    return {kWordsFromPx + wordsWidth(), fontMetrics().height() + 6};
}

bool EntryButton::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const QPoint at = static_cast<QHelpEvent*>(event)->globalPos();
        QToolTip::showText(at, toolTipText(), this, rect());
        return true;
    }
    return QAbstractButton::event(event);
}

void EntryButton::paintSign(QPainter& painter) const {
    const TableColours& colours = tableColours(isDark(palette()));
    const QPointF middle(kDotMiddlePx, height() / 2.0);
    painter.setBrush(colours.paper);
    if (isShown_) {
        painter.setPen(QPen(colours.halo, 2));
        painter.drawEllipse(middle, kHaloRadiusPx, kHaloRadiusPx);
    }
    if (kind_ == TimelineKind::revision) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(inkLook(number_, isDark(palette())).colour);
        painter.drawEllipse(middle, kDotRadiusPx, kDotRadiusPx);
        return;
    }
    painter.setPen(QPen(colours.graphite, 1.6, Qt::SolidLine, Qt::RoundCap));
    if (kind_ == TimelineKind::pencil) {
        if (!isShown_) painter.fillRect(QRectF(0, 0, kWordsFromPx, height()), colours.paper);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(wave(middle));
        return;
    }
    const QPointF arm(kCrossPx, kCrossPx);
    const QPointF otherArm(kCrossPx, -kCrossPx);
    painter.drawLine(middle - arm, middle + arm);
    painter.drawLine(middle - otherArm, middle + otherArm);
}

void EntryButton::paintWords(QPainter& painter) const {
    const TableColours& colours = tableColours(isDark(palette()));
    const QRect room = rect().adjusted(kWordsFromPx, 0, 0, 0);
    painter.fillRect(room.adjusted(-2, 1, 0, -1), colours.paper);  // the line runs on behind it
    QFont name = font();
    name.setBold(isShown_);
    painter.setFont(name);
    painter.setPen(colours.ink);
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, words_.name);
    const int width = QFontMetrics(name).horizontalAdvance(words_.name) + kBetweenWordsPx;
    painter.setFont(font());
    painter.setPen(colours.text);
    painter.drawText(room.adjusted(width, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words_.day);
}

void EntryButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintWords(painter);
    paintSign(painter);
    const QColor halo = tableColours(isDark(palette())).halo;
    painter.setBrush(Qt::NoBrush);
    if (hasFocus()) {
        painter.setPen(QPen(halo, 1.5));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
    } else if (underMouse()) {
        painter.setPen(halo);
        const int line = height() - 3;
        painter.drawLine(kWordsFromPx, line, width() - kAfterWordsPx, line);
    }
}

void EntryButton::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
        case Qt::Key_Up:
            emit stepped(-1);
            return;
        case Qt::Key_Right:
        case Qt::Key_Down:
            emit stepped(1);
            return;
        case Qt::Key_Home:
        case Qt::Key_End:
            emit ended(event->key() == Qt::Key_End);
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Space:
            emit chosen();
            return;
        case Qt::Key_C:
            emit chosenBeside();
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

void EntryButton::focusInEvent(QFocusEvent* event) {
    QAbstractButton::focusInEvent(event);
    emit entered();
}

void EntryButton::mouseReleaseEvent(QMouseEvent* event) {
    const bool isClick = isDown() && rect().contains(event->pos());
    setDown(false);
    if (!isClick || event->button() != Qt::LeftButton) return;
    if (event->modifiers() & (Qt::ControlModifier | Qt::ShiftModifier)) {
        emit chosenBeside();
    } else {
        emit chosen();
    }
}

void EntryButton::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void EntryButton::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

}  // namespace coutil
