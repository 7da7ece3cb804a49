#include "ui/benches/problem_list.h"

#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/benches/card_text.h"
#include "ui/canvas/table_colours.h"
#include "ui/words/problem_sentence.h"

namespace coutil {

namespace {

// Severity is a word, not only a colour.
QString severityWord(Severity severity) {
    switch (severity) {
        case Severity::error:
            return ProblemLine::tr("Error");
        case Severity::warning:
            return ProblemLine::tr("Warning");
        case Severity::note:
            return ProblemLine::tr("Note");
    }
    return {};
}

}  // namespace

ProblemLine::ProblemLine(QWidget* parent) : QFrame(parent), sentence_(new QLabel) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 4, 4, 4);
    sentence_->setWordWrap(true);
    sentence_->setTextFormat(Qt::PlainText);
    column->addWidget(sentence_);
}

void ProblemLine::showProblem(const Problem& problem, LengthUnit unit) {
    severity_ = problem.severity;
    const QString text =
        tr("%1: %2").arg(severityWord(problem.severity), problemSentence(problem, unit));
    if (text == sentence_->text()) return;
    sentence_->setText(text);
    setAccessibleName(text);
}

void ProblemLine::enterEvent(QEnterEvent*) {
    update();
    emit pointed(true);
}

void ProblemLine::leaveEvent(QEvent*) {
    update();
    emit pointed(hasFocus());
}

void ProblemLine::focusInEvent(QFocusEvent* event) {
    QFrame::focusInEvent(event);
    emit pointed(true);
}

void ProblemLine::focusOutEvent(QFocusEvent* event) {
    QFrame::focusOutEvent(event);
    emit pointed(false);
}

void ProblemLine::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && rect().contains(event->pos())) emit chosen();
}

void ProblemLine::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter ||
        event->key() == Qt::Key_Space) {
        emit chosen();
        return;
    }
    QFrame::keyPressEvent(event);
}

void ProblemLine::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    QPainter painter(this);
    const TableColours& colours = tableColours(isDark(palette()));
    const QColor bar = severity_ == Severity::note ? colours.halo : colours.problem;
    painter.fillRect(QRect(0, 2, severity_ == Severity::error ? 4 : 2, height() - 4), bar);
    if (!hasFocus() && !underMouse()) return;
    painter.setPen(palette().color(QPalette::Highlight));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

ProblemList::ProblemList(QWidget* parent)
    : QWidget(parent), column_(new QVBoxLayout(this)), none_(quietText(tr("No problems."))) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(2);
    column_->addWidget(none_);
}

// A line that loses the keyboard because the window goes must not speak to a list half gone.
ProblemList::~ProblemList() {
    for (ProblemLine* line : lines_) line->disconnect(this);
}

ProblemLine* ProblemList::makeLine() {
    auto* line = new ProblemLine(this);
    const std::size_t index = lines_.size();
    connect(line, &ProblemLine::pointed, this, [this, index](bool isPointed) {
        if (isPointed && index < problems_.size()) {
            emit pointed(problems_[index]);
        } else {
            emit pointedAway();
        }
    });
    connect(line, &ProblemLine::chosen, this, [this, index] {
        if (index < problems_.size()) emit chosen(problems_[index]);
    });
    column_->addWidget(line);
    return line;
}

// Lines are kept and given new words: a redraft on every keystroke must not rebuild the card.
void ProblemList::showProblems(const std::vector<Problem>& problems, LengthUnit unit) {
    problems_ = problems;
    std::stable_sort(problems_.begin(), problems_.end(),
                     [](const Problem& a, const Problem& b) { return a.severity > b.severity; });
    while (lines_.size() < problems_.size()) lines_.push_back(makeLine());
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        lines_[i]->setVisible(i < problems_.size());
        if (i < problems_.size()) lines_[i]->showProblem(problems_[i], unit);
    }
    none_->setVisible(problems_.empty());
}

}  // namespace coutil
