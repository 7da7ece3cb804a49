#include "ui/benches/fit_alteration_list.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/alterations/named_place.h"
#include "ui/benches/card_text.h"
#include "ui/fields/text_colours.h"
#include "ui/words/alteration_sentence.h"
#include "ui/words/problem_sentence.h"

namespace coutil {

namespace {

bool isAbout(const Problem& problem, const Alteration& alteration) {
    return problem.subject == kindOf(alteration.change) &&
           (problem.detail.empty() || problem.detail == placeNamedBy(alteration.change));
}

QString wordsOf(const Alteration& alteration, LengthUnit unit) {
    QString words = alterationSentence(alteration, unit);
    if (alteration.why.empty()) return words;
    return FitAlterationList::tr("%1 (%2)", "alteration, why")
        .arg(words, QString::fromStdString(alteration.why));
}

}  // namespace

FitAlterationList::FitAlterationList(QWidget* parent)
    : QWidget(parent), lineColumn_(new QVBoxLayout), none_(quietText()), symmetry_(new QWidget) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(none_);
    column->addLayout(lineColumn_);
    lineColumn_->setSpacing(1);
    layOutSymmetry();
    column->addWidget(symmetry_);
    symmetry_->hide();
}

void FitAlterationList::layOutSymmetry() {
    auto* column = new QVBoxLayout(symmetry_);
    column->setContentsMargins(0, 4, 0, 0);
    column->addWidget(quietText(tr("Left and right differ. Make both sides equal again:")));
    auto* row = new QHBoxLayout;
    const auto add = [&](const QString& words, const QString& spoken, const char* name,
                         SymmetrySource from) {
        auto* button = new QPushButton(words);
        button->setAccessibleName(spoken);
        button->setObjectName(QLatin1String(name));
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, from] { emit symmetryWanted(from); });
    };
    add(tr("Mean of both"), tr("Both sides equal, the mean of both"), "equalMean",
        SymmetrySource::mean);
    add(tr("As left"), tr("Both sides equal, as the left"), "equalLeft", SymmetrySource::left);
    add(tr("As right"), tr("Both sides equal, as the right"), "equalRight", SymmetrySource::right);
    row->addStretch(1);
    column->addLayout(row);
}

void FitAlterationList::makeLine() {
    const std::size_t index = lines_.size();
    Line& line = lines_.emplace_back();
    line.whole = new QWidget;
    line.isOn = new QCheckBox;
    line.words = new QLabel;
    line.problem = new QLabel;
    line.remove = new QToolButton;
    line.isOn->setObjectName(QStringLiteral("alterationOn"));
    line.remove->setObjectName(QStringLiteral("removeAlteration"));
    line.remove->setText(QStringLiteral("×"));
    line.remove->setAutoRaise(true);
    line.remove->setFocusPolicy(Qt::StrongFocus);
    for (QLabel* label : {line.words, line.problem}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    auto* column = new QVBoxLayout(line.whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    auto* row = new QHBoxLayout;
    row->addWidget(line.isOn);
    row->addWidget(line.words, 1);
    row->addWidget(line.remove);
    column->addLayout(row);
    column->addWidget(line.problem);
    lineColumn_->addWidget(line.whole);
    connect(line.isOn, &QCheckBox::clicked, this,
            [this, index](bool isOn) { emit switched(lines_[index].id, isOn); });
    connect(line.remove, &QToolButton::clicked, this,
            [this, index] { emit removed(lines_[index].id); });
}

void FitAlterationList::showAlterations(const std::vector<Alteration>& alterations,
                                        const std::vector<Problem>& problems, LengthUnit unit) {
    none_->setText(tr("No alterations yet."));
    none_->setVisible(alterations.empty());
    while (lines_.size() < alterations.size()) makeLine();
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        Line& line = lines_[i];
        line.whole->setVisible(i < alterations.size());
        if (i >= alterations.size()) continue;
        const Alteration& alteration = alterations[i];
        line.id = alteration.id;
        line.isOn->setChecked(alteration.isOn);
        // What came from marks goes with its marks.
        line.remove->setVisible(alteration.marks.empty());
        const auto against = std::ranges::find_if(
            problems, [&](const Problem& p) { return isAbout(p, alteration); });
        line.problem->setVisible(alteration.isOn && against != problems.end());
        if (against != problems.end()) {
            line.problem->setText(problemSentence(*against, unit));
            line.problem->setPalette(withText(palette(), errorColour(palette())));
        }
        const QString words = wordsOf(alteration, unit);
        if (words == line.words->text()) continue;
        line.words->setText(words);
        line.isOn->setAccessibleName(tr("%1: counts").arg(words));
        line.remove->setAccessibleName(tr("Remove %1").arg(words));
    }
}

void FitAlterationList::showNone(const QString& why) {
    for (Line& line : lines_) line.whole->hide();
    none_->setText(why);
    none_->show();
}

void FitAlterationList::setWhole(bool isWhole) { symmetry_->setVisible(isWhole); }

}  // namespace coutil
