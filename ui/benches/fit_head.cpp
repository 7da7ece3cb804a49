#include "ui/benches/fit_head.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/benches/card_text.h"
#include "ui/fields/date_field.h"
#include "ui/fields/text_field.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

QString howWords(FittingKind how) {
    return how == FittingKind::posted ? FitHead::tr("posted") : FitHead::tr("in person");
}

}  // namespace

FitHead::FitHead(QWidget* parent)
    : QWidget(parent),
      fittings_(new ChoiceField),
      remove_(new QPushButton(tr("Remove"))),
      how_(new ChoiceField),
      heldOn_(new DateField),
      triedChoice_(new ChoiceField),
      readBy_(new TextField),
      note_(new TextField),
      elsewhere_(new QWidget) {
    layOut();
    how_->setChoices({{howWords(FittingKind::inPerson), int(FittingKind::inPerson)},
                      {howWords(FittingKind::posted), int(FittingKind::posted)}});
    connect(fittings_, &ChoiceField::chosen, this,
            [this](int index) { emit chosen(ids_.at(static_cast<std::size_t>(index))); });
    connect(remove_, &QPushButton::clicked, this, &FitHead::removeWanted);
    connect(how_, &ChoiceField::chosen, this, [this](int how) {
        Fitting after = fitting_;
        after.how = FittingKind(how);
        edit(after, tr("how it was fitted"), {});
    });
    connect(heldOn_, &DateField::edited, this, [this](const std::string& date) {
        Fitting after = fitting_;
        after.heldOn = date;
        edit(after, tr("date of the fitting"), QStringLiteral("date"));
    });
    connect(triedChoice_, &ChoiceField::chosen, this, [this](int index) {
        Fitting after = fitting_;
        const Tried& tried = tried_.at(static_cast<std::size_t>(index));
        after.revision = tried.revision;
        after.pencil = tried.pencil;
        edit(after, tr("what was tried on"), {});
    });
    connect(readBy_, &TextField::textEdited, this, [this](const QString& text) {
        Fitting after = fitting_;
        after.readBy = text.toStdString();
        edit(after, tr("who read the fitting"), QStringLiteral("read by"));
    });
    connect(note_, &TextField::textEdited, this, [this](const QString& text) {
        Fitting after = fitting_;
        after.note = text.toStdString();
        edit(after, tr("note of the fitting"), QStringLiteral("note"));
    });
    for (TextField* field : {readBy_, note_})
        connect(field, &TextField::left, this, &FitHead::left);
}

void FitHead::layOut() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    auto* more = new QPushButton(tr("New"));
    more->setAccessibleName(tr("New fitting"));
    remove_->setAccessibleName(tr("Remove this fitting"));
    more->setObjectName(QStringLiteral("newFitting"));
    remove_->setObjectName(QStringLiteral("removeFitting"));
    fittings_->setObjectName(QStringLiteral("fittings"));
    fittings_->setAccessibleName(tr("Fitting"));
    row->addWidget(fittings_, 1);
    row->addWidget(more);
    row->addWidget(remove_);
    column->addLayout(row);
    connect(more, &QPushButton::clicked, this, &FitHead::newWanted);

    auto* form = new QFormLayout;
    const auto add = [&](const QString& words, QWidget* field, const char* name) {
        field->setAccessibleName(words);
        field->setObjectName(QLatin1String(name));
        form->addRow(words, field);
    };
    add(tr("Fitted"), how_, "fittedHow");
    add(tr("On"), heldOn_, "fittedOn");
    add(tr("Tried"), triedChoice_, "fittedRevision");
    add(tr("Read by"), readBy_, "fittedBy");
    add(tr("Note"), note_, "fittedNote");
    column->addLayout(form);

    auto* inside = new QVBoxLayout(elsewhere_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->addWidget(
        quietText(tr("Something else is on the table than was tried on: marks are "
                     "kept here, but nothing is drawn from them.")));
    auto* show = new QPushButton(tr("Show what was tried"));
    show->setObjectName(QStringLiteral("showTried"));
    inside->addWidget(show);
    column->addWidget(elsewhere_);
    auto* sheet = new QPushButton(tr("Print the fitting sheet to post…"));
    sheet->setObjectName(QStringLiteral("fittingSheetAgain"));
    column->addWidget(sheet);
    connect(show, &QPushButton::clicked, this, &FitHead::triedWanted);
    connect(sheet, &QPushButton::clicked, this, &FitHead::sheetWanted);
}

void FitHead::fillFittings(const Garment& garment) {
    QList<ChoiceField::Choice> choices;
    ids_.clear();
    for (const Fitting& each : garment.fittings) {
        choices.append(
            {tr("%1, %2", "fitting: date, how").arg(dateText(each.heldOn), howWords(each.how)),
             int(ids_.size())});
        ids_.push_back(each.id);
    }
    fittings_->setChoices(choices);
    const auto at = std::ranges::find(ids_, fitting_.id) - ids_.begin();
    fittings_->setValue(static_cast<int>(at));
}

void FitHead::fillTried(const Folio& folio, const Garment& garment) {
    QList<ChoiceField::Choice> choices;
    tried_.clear();
    const auto add = [&](const QString& words, Tried tried) {
        choices.append({words, int(tried_.size())});
        tried_.push_back(std::move(tried));
    };
    for (const auto& revision : garment.revisions)
        add(revisionName(*revision), {revision->digest(), {}});
    for (const Pencil& pencil : garment.pencils) add(pencilName(pencil), {{}, pencil.id});
    const auto isIt = [&](const Tried& tried) {
        return tried.revision == fitting_.revision &&
               (!tried.revision.empty() || tried.pencil == fitting_.pencil);
    };
    if (std::ranges::none_of(tried_, isIt)) {
        const Revision* other = findRevision(folio, fitting_.revision);
        add(other != nullptr ? revisionName(*other) : tr("a pencil that is no more"),
            {fitting_.revision, fitting_.pencil});
    }
    triedChoice_->setChoices(choices);
    triedChoice_->setValue(static_cast<int>(std::ranges::find_if(tried_, isIt) - tried_.begin()));
}

void FitHead::showFitting(const Folio& folio, const Garment& garment, const Fitting& fitting,
                          bool isDrawn) {
    fitting_ = fitting;
    fillFittings(garment);
    fillTried(folio, garment);
    how_->setValue(int(fitting.how));
    heldOn_->setIsoDate(fitting.heldOn);
    readBy_->showText(QString::fromStdString(fitting.readBy));
    note_->showText(QString::fromStdString(fitting.note));
    elsewhere_->setVisible(!isDrawn);
}

void FitHead::edit(const Fitting& after, const QString& words, const QString& field) {
    const QString key =
        field.isEmpty()
            ? QString()
            : QStringLiteral("fitting %1 %2").arg(QString::fromStdString(after.id), field);
    emit edited(after, words, key);
}

}  // namespace coutil
