#include "ui/window/message_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>

#include "ui/fields/text_colours.h"
#include "ui/window/line_icon.h"

namespace coutil {

namespace {
constexpr int kNoteStaysMs = 6000;
constexpr int kMarkWidthPx = 4;
}  // namespace

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent),
      text_(new QLabel),
      action_(new QPushButton),
      otherAction_(new QPushButton),
      close_(new QToolButton) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 6, 8, 6);
    row->setSpacing(12);
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    close_->setAutoRaise(true);
    close_->setIcon(lineIcon(QStringLiteral("close")));
    close_->setAccessibleName(tr("Close this message"));
    close_->setToolTip(close_->accessibleName());
    row->addWidget(text_, 1);
    row->addWidget(action_);
    row->addWidget(otherAction_);
    row->addWidget(close_);
    goesAway_.setSingleShot(true);
    goesAway_.setInterval(kNoteStaysMs);
    connect(&goesAway_, &QTimer::timeout, this, &MessageBar::dismiss);
    connect(close_, &QToolButton::clicked, this, &MessageBar::dismiss);
    connect(action_, &QPushButton::clicked, this, [this] { act(&Message::action); });
    connect(otherAction_, &QPushButton::clicked, this, [this] { act(&Message::otherAction); });
    hide();
}

void MessageBar::act(std::function<void()> Message::*action) {
    if (waiting_.isEmpty()) return;
    const std::function<void()> taken = waiting_.first().*action;
    dismiss();
    if (taken) taken();
}

void MessageBar::say(const Message& message) {
    for (const Message& other : waiting_) {
        if (other.text == message.text) return;  // said already
    }
    if (isFleeting()) waiting_.removeFirst();
    waiting_.append(message);
    if (waiting_.size() == 1) showFirst();
}

void MessageBar::dismiss() {
    if (!waiting_.isEmpty()) waiting_.removeFirst();
    showFirst();
}

void MessageBar::takeBack(const QString& text) {
    const auto gone = waiting_.removeIf([&text](const Message& m) { return m.text == text; });
    if (gone > 0) showFirst();
}

void MessageBar::dismissAll() {
    waiting_.clear();
    showFirst();
}

QString MessageBar::shownText() const { return isHidden() ? QString() : text_->text(); }

bool MessageBar::isErrorShown() const { return !waiting_.isEmpty() && waiting_.first().isError; }

bool MessageBar::isFleeting() const { return !waiting_.isEmpty() && goesAway_.isActive(); }

void MessageBar::showFirst() {
    goesAway_.stop();
    if (waiting_.isEmpty()) {
        hide();
        return;
    }
    const Message& first = waiting_.first();
    text_->setText(first.text);
    text_->setAccessibleName(first.text);
    action_->setText(first.actionWords);
    action_->setAccessibleName(first.actionWords);
    action_->setVisible(!first.actionWords.isEmpty());
    otherAction_->setText(first.otherWords);
    otherAction_->setAccessibleName(first.otherWords);
    otherAction_->setVisible(!first.otherWords.isEmpty());
    dye();
    show();
    if (!first.isError && !first.action) goesAway_.start();
}

void MessageBar::dye() {
    const QPalette general = parentWidget() != nullptr ? parentWidget()->palette() : palette();
    QPalette dyed = text_->palette();
    dyed.setColor(QPalette::WindowText,
                  isErrorShown() ? errorColour(general) : general.color(QPalette::WindowText));
    text_->setPalette(dyed);
    update();
}

void MessageBar::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) dye();
}

void MessageBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    const QColor mark =
        isErrorShown() ? errorColour(palette()) : palette().color(QPalette::Highlight);
    painter.fillRect(QRect(0, 0, kMarkWidthPx, height()), mark);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

}  // namespace coutil
