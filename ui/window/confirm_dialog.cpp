#include "ui/window/confirm_dialog.h"

#include <QDate>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/benches/problem_list.h"
#include "ui/fields/date_field.h"
#include "ui/fields/text_colours.h"

namespace coutil {

namespace {

constexpr int kWidthPx = 520;
constexpr int kNoteHeightPx = 110;
constexpr int kProblemsHeightPx = 150;

QLabel* wrapped(const QString& text) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

bool isErrorAmong(const std::vector<Problem>& problems) {
    return std::ranges::any_of(
        problems, [](const Problem& problem) { return problem.severity == Severity::error; });
}

}  // namespace

ConfirmDialog::ConfirmDialog(const ConfirmOffer& offer, QWidget* parent)
    : QDialog(parent),
      hasErrors_(isErrorAmong(offer.problems)),
      date_(new DateField),
      by_(new QLineEdit),
      note_(new QPlainTextEdit),
      reason_(new QLineEdit),
      confirm_(nullptr) {
    setWindowTitle(tr("Confirm revision %1 of %2").arg(offer.number).arg(offer.garment));
    setMinimumWidth(kWidthPx);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->setSpacing(10);
    column->addWidget(
        wrapped(tr("The pencil is gone over in ink and becomes revision %1. Its outlines, "
                   "measurements, style and alterations, the date, the name and the note never "
                   "change again, and undo does not go back over it. What comes later begins as a "
                   "new pencil. The folio is saved at once.")
                    .arg(offer.number)));
    buildFields(offer, *column);
    buildProblems(offer, *column);
    buildButtons(offer, *column);
    showWhetherItMay();
}

void ConfirmDialog::buildFields(const ConfirmOffer& offer, QVBoxLayout& column) {
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    date_->setIsoDate(offer.date);
    by_->setText(offer.by);
    note_->setPlainText(offer.note);
    note_->setFixedHeight(kNoteHeightPx);
    note_->setTabChangesFocus(true);
    date_->setAccessibleName(tr("Date"));
    by_->setAccessibleName(tr("Confirmed by"));
    note_->setAccessibleName(tr("Note"));
    form->addRow(tr("&Date"), date_);
    form->addRow(tr("Confirmed &by"), by_);
    form->addRow(tr("&Note"), note_);
    column.addLayout(form);
}

void ConfirmDialog::buildProblems(const ConfirmOffer& offer, QVBoxLayout& column) {
    auto* list = new ProblemList;
    list->showProblems(offer.problems, offer.unit);
    auto* area = new QScrollArea;
    area->setWidget(list);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setMaximumHeight(offer.problems.empty() ? list->sizeHint().height() : kProblemsHeightPx);
    auto* head = new QLabel(tr("Problems that stand"));
    QFont bold = head->font();
    bold.setBold(true);
    head->setFont(bold);
    column.addWidget(head);
    column.addWidget(area);
    reason_->setVisible(hasErrors_);
    if (!hasErrors_) return;
    auto* why =
        wrapped(tr("Errors stand. Go back and mend them, or write why it is confirmed all "
                   "the same:"));
    why->setPalette(withText(why->palette(), errorColour(why->palette())));
    column.addWidget(why);
    reason_->setAccessibleName(tr("Why it is confirmed although errors stand"));
    column.addWidget(reason_);
    connect(reason_, &QLineEdit::textChanged, this, &ConfirmDialog::showWhetherItMay);
}

void ConfirmDialog::buildButtons(const ConfirmOffer& offer, QVBoxLayout& column) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    confirm_ = buttons->addButton(tr("&Confirm revision %1").arg(offer.number),
                                  QDialogButtonBox::AcceptRole);
    confirm_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column.addWidget(buttons);
    if (!hasErrors_) reason_->setParent(this);
    by_->setFocus();
}

void ConfirmDialog::showWhetherItMay() {
    confirm_->setEnabled(!hasErrors_ || !reason_->text().trimmed().isEmpty());
}

Confirmation ConfirmDialog::confirmation() const {
    return {.on = date_->isoDate(),
            .by = by_->text().trimmed().toStdString(),
            .note = note_->toPlainText().trimmed().toStdString(),
            .reason = hasErrors_ ? reason_->text().trimmed().toStdString() : std::string()};
}

}  // namespace coutil
