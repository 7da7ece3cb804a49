#include "ui/benches/fit_mark_list.h"

#include <QCheckBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/fit_mark_forms.h"
#include "ui/fields/length_field.h"
#include "ui/words/alteration_words.h"
#include "ui/words/mark_words.h"

namespace coutil {

namespace {

constexpr int kAmountWidthPx = 66;

QString lineWords(const Mark& mark, LengthUnit unit) {
    QString words = markPlaceText(mark.place, unit);
    const QString term = markTerm(keyOf(mark.kind));
    words = words.isEmpty() ? term : FitMarkLine::tr("%1: %2", "place: pinned").arg(words, term);
    if (mark.side != BodySide::both) words += QStringLiteral(", ") + sideName(mark.side);
    return words;
}

}  // namespace

FitMarkLine::FitMarkLine(QWidget* parent)
    : QFrame(parent),
      isOn_(new QCheckBox),
      words_(new QLabel),
      amount_(new LengthField),
      remove_(new QToolButton) {
    setFocusPolicy(Qt::StrongFocus);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(6, 1, 1, 1);
    row->setSpacing(4);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    amount_->setCompact(true);
    amount_->setFixedWidth(kAmountWidthPx);
    isOn_->setToolTip(tr("Off: kept, but nothing is drawn from it"));
    remove_->setText(QStringLiteral("×"));
    remove_->setAutoRaise(true);
    remove_->setFocusPolicy(Qt::StrongFocus);
    isOn_->setObjectName(QStringLiteral("markOn"));
    amount_->setObjectName(QStringLiteral("markLineAmount"));
    remove_->setObjectName(QStringLiteral("removeMark"));
    row->addWidget(isOn_);
    row->addWidget(words_, 1);
    row->addWidget(amount_);
    row->addWidget(remove_);
    connectFields();
}

void FitMarkLine::connectFields() {
    connect(isOn_, &QCheckBox::clicked, this, [this](bool isOn) {
        Mark after = mark_;
        after.isOn = isOn;
        emit edited(after, QStringLiteral("on"));
    });
    connect(amount_, &LengthField::entered, this, [this] {
        enteredKind_ = mark_.kind;
        isTyping_ = true;
        emit picked();
    });
    connect(amount_, &LengthField::edited, this, [this](std::optional<double> mm) {
        if (mm) emit edited(withAmount(mark_, enteredKind_, *mm), QStringLiteral("amount"));
    });
    connect(amount_, &LengthField::left, this, [this] {
        isTyping_ = false;
        amount_->setValueMm(mark_.amountMm);
        emit left();
    });
    connect(remove_, &QToolButton::clicked, this, &FitMarkLine::removed);
}

void FitMarkLine::showMark(const Mark& mark, bool isPicked, LengthUnit unit) {
    const bool isOther = mark.id != mark_.id;
    mark_ = mark;
    isOn_->setChecked(mark.isOn);
    const QString words = lineWords(mark, unit);
    if (words_->text() != words) words_->setText(words);
    words_->setEnabled(mark.isOn);
    amount_->setUnit(unit);
    amount_->setVisible(!isNote(mark.kind));
    if (!isTyping_ || isOther) amount_->setValueMm(mark.amountMm);
    const QString all = markSentence(mark, unit);
    if (accessibleName() != all) {
        setAccessibleName(all);
        isOn_->setAccessibleName(tr("%1: counts").arg(all));
        amount_->setAccessibleName(tr("Amount, %1").arg(all));
        remove_->setAccessibleName(tr("Remove %1").arg(all));
        remove_->setToolTip(tr("Remove this mark"));
        setToolTip(QString::fromStdString(mark.note));
    }
    if (isPicked_ == isPicked) return;
    isPicked_ = isPicked;
    update();
}

void FitMarkLine::focusInEvent(QFocusEvent* event) {
    QFrame::focusInEvent(event);
    emit picked();
}

void FitMarkLine::mousePressEvent(QMouseEvent*) { setFocus(Qt::MouseFocusReason); }

void FitMarkLine::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
        emit removed();
        return;
    }
    if (event->key() == Qt::Key_Space) {
        isOn_->click();
        return;
    }
    const bool steps = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down;
    if (!steps || isNote(mark_.kind)) {
        QFrame::keyPressEvent(event);
        return;
    }
    amount_->setFocus(Qt::OtherFocusReason);
    QKeyEvent same(event->type(), event->key(), event->modifiers());
    QCoreApplication::sendEvent(amount_, &same);
}

void FitMarkLine::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    if (!isPicked_ && !hasFocus()) return;
    QPainter painter(this);
    painter.fillRect(QRect(0, 2, 3, height() - 4), palette().color(QPalette::Highlight));
    if (!hasFocus()) return;
    painter.setPen(palette().color(QPalette::Highlight));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

FitMarkList::FitMarkList(QWidget* parent)
    : QWidget(parent),
      column_(new QVBoxLayout(this)),
      none_(quietText(tr("No marks yet. Click a seam on the table where it was pinned or cut open, "
                         "and type the amount."))) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(1);
    column_->addWidget(none_);
}

FitMarkLine* FitMarkList::makeLine() {
    auto* line = new FitMarkLine(this);
    connect(line, &FitMarkLine::picked, this, [this, line] { emit picked(line->mark().id); });
    connect(line, &FitMarkLine::edited, this, &FitMarkList::edited);
    connect(line, &FitMarkLine::removed, this, [this, line] { emit removed(line->mark().id); });
    connect(line, &FitMarkLine::left, this, &FitMarkList::left);
    column_->addWidget(line);
    return line;
}

// Lines are kept and given other words: every keystroke comes through here.
void FitMarkList::showMarks(const std::vector<Mark>& marks, const std::string& picked,
                            LengthUnit unit) {
    while (lines_.size() < marks.size()) lines_.push_back(makeLine());
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (i < marks.size()) lines_[i]->showMark(marks[i], marks[i].id == picked, unit);
        lines_[i]->setVisible(i < marks.size());
    }
    none_->setVisible(marks.empty());
}

}  // namespace coutil
