#include "ui/benches/fit_mark_editor.h"

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/fit_mark_forms.h"
#include "ui/benches/fit_place_fields.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/length_field.h"
#include "ui/words/alteration_words.h"
#include "ui/words/mark_words.h"
#include "ui/words/problem_sentence.h"

namespace coutil {

FitMarkEditor::FitMarkEditor(QWidget* parent)
    : QWidget(parent),
      heading_(cardHeading(QString())),
      form_(new QFormLayout),
      kind_(new ChoiceField),
      place_(new FitPlaceFields),
      amount_(new LengthField),
      side_(new ChoiceField),
      note_(new TextField),
      complaint_(new QLabel),
      next_(new QPushButton) {
    layOut();
    connectFields();
}

void FitMarkEditor::layOut() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading_);
    QList<ChoiceField::Choice> kinds;
    for (const MarkForm& form : markForms()) kinds.append({form.words, int(kinds.size())});
    kind_->setChoices(kinds);
    side_->setChoices({{sideName(BodySide::both), int(BodySide::both)},
                       {sideName(BodySide::left), int(BodySide::left)},
                       {sideName(BodySide::right), int(BodySide::right)}});
    const auto add = [&](const QString& words, QWidget* field, const char* name) {
        field->setAccessibleName(words);
        field->setObjectName(QLatin1String(name));
        form_->addRow(words, field);
    };
    add(tr("Mark"), kind_, "markKind");
    form_->addRow(place_);
    add(tr("Amount"), amount_, "markAmount");
    add(tr("Side"), side_, "markSide");
    add(tr("Note"), note_, "markNote");
    column->addLayout(form_);
    complaint_->setWordWrap(true);
    complaint_->hide();
    complaint_->setObjectName(QStringLiteral("markComplaint"));
    column->addWidget(complaint_);
    next_->setObjectName(QStringLiteral("nextMark"));
    column->addWidget(next_, 0, Qt::AlignLeft);
}

void FitMarkEditor::connectFields() {
    connect(kind_, &ChoiceField::chosen, this, [this](int form) {
        enteredKind_ = markForms().at(static_cast<std::size_t>(form)).kind;
        take(inForm(mark_, form), QStringLiteral("kind"));
    });
    connect(place_, &FitPlaceFields::edited, this,
            [this](const MarkPlace& place, const QString& field) {
                Mark after = mark_;
                after.place = place;
                take(after, field);
            });
    connect(amount_, &LengthField::edited, this, &FitMarkEditor::takeAmount);
    connect(amount_, &LengthField::unreadable, this, [this](const Problem& problem) {
        complaint_->setText(problemSentence(problem, amount_->unit()));
        complaint_->show();
    });
    connect(amount_, &LengthField::entered, this, [this] {
        enteredKind_ = mark_.kind;
        isTyping_ = true;
    });
    connect(amount_, &LengthField::left, this, [this] {
        isTyping_ = false;
        kind_->setValue(formOf(mark_));
        if (amount_->isReadable() && mark_.amountMm > 0) amount_->setValueMm(mark_.amountMm);
        emit left();
    });
    connect(side_, &ChoiceField::chosen, this, [this](int side) {
        Mark after = mark_;
        after.side = BodySide(side);
        take(after, QStringLiteral("side"));
    });
    connect(note_, &TextField::textEdited, this, [this](const QString& text) {
        Mark after = mark_;
        after.note = text.toStdString();
        take(after, QStringLiteral("note"));
    });
    connect(place_, &FitPlaceFields::left, this, &FitMarkEditor::left);
    connect(note_, &TextField::left, this, &FitMarkEditor::left);
    for (TextField* field : {static_cast<TextField*>(amount_), note_})
        connect(field, &TextField::returnPressed, this, &FitMarkEditor::accepted);
    connect(next_, &QPushButton::clicked, this, &FitMarkEditor::accepted);
}

void FitMarkEditor::showMark(const Mark& mark, bool isNew, const Pattern& pattern,
                             LengthUnit unit) {
    const bool isOther = mark.id != mark_.id && !(mark_.id.empty() && isTyping_);
    mark_ = mark;
    heading_->setText(isNew ? tr("New mark") : tr("Picked mark"));
    next_->setText(isNew ? tr("Add") : tr("Next mark"));
    next_->setEnabled(!isNew || isComplete(mark));
    place_->showPlace(mark.place, pattern, unit);
    amount_->setUnit(unit);
    kind_->setValue(formOf(mark));  // follows a minus while it is typed
    if (!isTyping_ || isOther) {
        enteredKind_ = mark.kind;
        amount_->setValueMm(mark.amountMm > 0 ? std::optional(mark.amountMm) : std::nullopt);
    }
    form_->setRowVisible(amount_, !isNote(mark.kind));
    side_->setValue(int(mark.side));
    note_->showText(QString::fromStdString(mark.note));
    if (amount_->isReadable()) complaint_->hide();
}

void FitMarkEditor::startTyping() {
    TextField* field = isNote(mark_.kind) ? note_ : static_cast<TextField*>(amount_);
    field->setFocus(Qt::OtherFocusReason);
    field->selectAll();
}

void FitMarkEditor::startPlace() {
    LengthField* field = place_->firstFigure();
    if (field == nullptr) {
        startTyping();
        return;
    }
    field->setFocus(Qt::OtherFocusReason);
    field->selectAll();
}

void FitMarkEditor::take(const Mark& after, const QString& field) {
    mark_ = after;
    emit edited(after, field);
}

void FitMarkEditor::takeAmount(std::optional<double> mm) {
    complaint_->hide();
    // A typed minus is opened also where the choice still says opened from the mark before.
    const double typedMm = mm.value_or(0);
    const MarkKind read = typedMm < 0 ? unsignedKind(enteredKind_) : enteredKind_;
    take(withAmount(mark_, read, typedMm), QStringLiteral("amount"));
}

}  // namespace coutil
