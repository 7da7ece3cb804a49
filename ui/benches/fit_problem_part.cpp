#include "ui/benches/fit_problem_part.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/benches/card_text.h"
#include "ui/benches/problem_list.h"
#include "ui/fields/text_field.h"

namespace coutil {

namespace {

const SetAside* asideOf(const Problem& problem, const std::vector<SetAside>& all) {
    const auto found = std::ranges::find_if(
        all, [&](const SetAside& each) { return setAsideOf(problem, each.reason) == each; });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace

SetAside setAsideOf(const Problem& problem, const std::string& reason) {
    return {std::string(keyOf(problem.code)), problem.subject, problem.panel, reason};
}

FitProblemLine::FitProblemLine(QWidget* parent)
    : QWidget(parent),
      line_(new ProblemLine),
      reason_(quietText()),
      answer_(new TextField),
      button_(new QPushButton) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(line_);
    column->addWidget(reason_);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(10, 0, 0, 0);
    row->addWidget(answer_, 1);
    row->addWidget(button_);
    row->addStretch(0);
    column->addLayout(row);
    answer_->setPlaceholderText(tr("Why it may stand"));
    answer_->setAccessibleName(tr("Why it may stand"));
    answer_->setObjectName(QStringLiteral("reasonToSetAside"));
    button_->setObjectName(QStringLiteral("setAside"));
    button_->setFlat(true);
    answer_->hide();
    connect(button_, &QPushButton::clicked, this, [this] {
        if (isAside_) {
            emit takenBack();
        } else {
            ask();
        }
    });
    connect(answer_, &TextField::returnPressed, this, &FitProblemLine::ask);
}

// The first time it opens the line for the reason; with a reason in it, the problem is set aside.
void FitProblemLine::ask() {
    const QString reason = answer_->text().trimmed();
    if (!answer_->isVisibleTo(this) || reason.isEmpty()) {
        answer_->show();
        answer_->setFocus(Qt::OtherFocusReason);
        return;
    }
    answer_->hide();
    answer_->clear();
    emit setAside(reason);
}

void FitProblemLine::showProblem(const Problem& problem, const SetAside* setAside, bool maySetAside,
                                 LengthUnit unit) {
    const bool wasAside = isAside_;
    isAside_ = setAside != nullptr;
    line_->showProblem(problem, unit);
    line_->setEnabled(!isAside_);
    reason_->setVisible(isAside_);
    if (isAside_) {
        reason_->setText(tr("Set aside: %1").arg(QString::fromStdString(setAside->reason)));
        answer_->hide();
    }
    if (wasAside != isAside_) answer_->clear();
    button_->setText(isAside_ ? tr("Take back") : tr("Set aside…"));
    button_->setVisible(maySetAside && (isAside_ || problem.severity != Severity::error));
}

FitProblemPart::FitProblemPart(QWidget* parent)
    : QWidget(parent), column_(new QVBoxLayout(this)), none_(quietText(tr("No problems."))) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(2);
    column_->addWidget(none_);
}

// A line that loses the keyboard because the window goes must not speak to a part half gone.
FitProblemPart::~FitProblemPart() {
    for (FitProblemLine* each : lines_) each->line().disconnect(this);
}

FitProblemLine* FitProblemPart::makeLine() {
    auto* made = new FitProblemLine(this);
    const std::size_t index = lines_.size();
    const auto with = [this, index](auto what) {
        if (index < problems_.size()) what(problems_[index]);
    };
    connect(&made->line(), &ProblemLine::pointed, this, [this, with](bool isPointed) {
        if (!isPointed) emit pointedAway();
        if (isPointed) with([this](const Problem& problem) { emit pointed(problem); });
    });
    connect(&made->line(), &ProblemLine::chosen, this,
            [this, with] { with([this](const Problem& problem) { emit chosen(problem); }); });
    connect(made, &FitProblemLine::setAside, this, [this, with](const QString& reason) {
        with([&](const Problem& problem) {
            emit setAside(setAsideOf(problem, reason.toStdString()));
        });
    });
    connect(made, &FitProblemLine::takenBack, this, [this, with] {
        with([this](const Problem& problem) { emit takenBack(setAsideOf(problem, {})); });
    });
    column_->addWidget(made);
    return made;
}

void FitProblemPart::showProblems(const std::vector<Problem>& problems,
                                  const std::vector<SetAside>& setAside, bool maySetAside,
                                  LengthUnit unit) {
    problems_ = problems;
    std::ranges::stable_sort(problems_, [&](const Problem& a, const Problem& b) {
        const bool isAsideA = asideOf(a, setAside) != nullptr;
        const bool isAsideB = asideOf(b, setAside) != nullptr;
        return isAsideA != isAsideB ? isAsideB : a.severity > b.severity;
    });
    while (lines_.size() < problems_.size()) lines_.push_back(makeLine());
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        lines_[i]->setVisible(i < problems_.size());
        if (i >= problems_.size()) continue;
        lines_[i]->showProblem(problems_[i], asideOf(problems_[i], setAside), maySetAside, unit);
    }
    none_->setVisible(problems_.empty());
}

}  // namespace coutil
