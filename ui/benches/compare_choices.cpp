#include "ui/benches/compare_choices.h"

#include <QFormLayout>
#include <QPushButton>
#include <algorithm>
#include <utility>

#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"

namespace coutil {

namespace {

enum What { twoStates, twoSides };
enum View { overlaid, sideBySide };

StateRef shownState(const FolioDocument& document) {
    if (const Revision* revision = document.revision()) return {revision->digest(), {}};
    if (const Pencil* pencil = document.pencil()) return {{}, pencil->id};
    return {};
}

}  // namespace

CompareChoices::CompareChoices(FolioDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      what_(new ChoiceField),
      first_(new ChoiceField),
      second_(new ChoiceField),
      view_(new ChoiceField),
      factor_(new ChoiceField),
      swap_(new QPushButton(tr("Swap A and B"))) {
    buildFields();
    connect(what_, &ChoiceField::chosen, this, [this] {
        showFields();
        emit chosen();
    });
    for (ChoiceField* field : {first_, second_}) {
        connect(field, &ChoiceField::chosen, this, [this, field] { takeState(field); });
    }
    for (ChoiceField* field : {view_, factor_}) {
        connect(field, &ChoiceField::chosen, this, [this] {
            showFields();
            emit viewChosen();
        });
    }
    connect(swap_, &QPushButton::clicked, this, [this] { choose(b_, a_); });
}

void CompareChoices::buildFields() {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    const auto add = [&](ChoiceField* field, const QString& label, const char* name,
                         const QString& accessible) {
        field->setObjectName(QLatin1String(name));
        field->setAccessibleName(accessible);
        form->addRow(label, field);
    };
    what_->setChoices({{tr("two revisions"), twoStates}, {tr("left against right"), twoSides}});
    view_->setChoices({{tr("over each other"), overlaid}, {tr("side by side"), sideBySide}});
    factor_->setChoices({{tr("as large as they are"), 1},
                         {tr("5 times as large"), 5},
                         {tr("10 times as large"), 10}});
    what_->setValue(twoStates);
    view_->setValue(overlaid);
    factor_->setValue(1);
    add(what_, tr("Compare"), "compareWhat", tr("What is compared"));
    add(first_, tr("A"), "compareA", tr("A, the first to compare"));
    add(second_, tr("B"), "compareB", tr("B, the second to compare"));
    swap_->setObjectName(QStringLiteral("compareSwap"));
    form->addRow(QString(), swap_);
    add(view_, tr("Show"), "compareView", tr("How both are shown"));
    add(factor_, tr("Differences"), "compareFactor", tr("How large differences are drawn"));
}

bool CompareChoices::areSides() const { return what_->value() == twoSides; }
bool CompareChoices::isSideBySide() const { return view_->value() == sideBySide; }
double CompareChoices::factor() const { return isSideBySide() ? 1 : factor_->value(); }
bool CompareChoices::hasTwo() const { return states_.size() > 1; }

int CompareChoices::indexOf(const StateRef& state) const {
    const auto found = std::ranges::find_if(
        states_, [&](const ComparableState& each) { return isSameState(each.state, state); });
    return found == states_.end() ? -1 : static_cast<int>(found - states_.begin());
}

// The parent; of a block whatever else there is, nearest in the list.
StateRef CompareChoices::partnerOf(const StateRef& state) const {
    const int index = indexOf(state);
    if (index < 0) return {};
    const std::string& parent = states_[static_cast<std::size_t>(index)].parent;
    if (!parent.empty() && indexOf({parent, {}}) >= 0) return {parent, {}};
    if (states_.size() < 2) return {};
    return states_[index == 0 ? 1 : static_cast<std::size_t>(index) - 1].state;
}

void CompareChoices::refresh() {
    states_ = comparableStates(document_.folio(),
                               static_cast<std::size_t>(std::max(0, document_.garmentIndex())));
    QList<ChoiceField::Choice> choices;
    for (std::size_t i = 0; i < states_.size(); ++i) {
        choices.append({states_[i].words, static_cast<int>(i)});
    }
    for (ChoiceField* field : {first_, second_}) field->setChoices(choices);
    if (indexOf(a_) < 0 || indexOf(b_) < 0) chooseShown();
    showFields();
}

void CompareChoices::chooseShown() {
    b_ = shownState(document_);
    a_ = partnerOf(b_);
    showFields();
}

void CompareChoices::choose(const StateRef& a, const StateRef& b) {
    a_ = a;
    b_ = b;
    what_->setValue(twoStates);
    showFields();
    emit chosen();
}

void CompareChoices::showFields() {
    first_->setValue(indexOf(a_));
    second_->setValue(indexOf(b_));
    first_->setEnabled(hasTwo() && !areSides());
    second_->setEnabled(hasTwo() || areSides());
    swap_->setEnabled(hasTwo() && !areSides());
    factor_->setEnabled(!isSideBySide());
}

// One cannot be compared with itself: the other gives way.
void CompareChoices::takeState(ChoiceField* field) {
    const int index = field->value();
    if (index < 0) return;
    StateRef& taken = field == first_ ? a_ : b_;
    StateRef& other = field == first_ ? b_ : a_;
    const StateRef before = std::exchange(taken, states_[static_cast<std::size_t>(index)].state);
    if (isSameState(taken, other)) other = before;
    showFields();
    emit chosen();
}

}  // namespace coutil
