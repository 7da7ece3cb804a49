#include "ui/benches/measure_head.h"

#include <QDate>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <algorithm>

#include "core/revision/begin_pencil.h"
#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/date_field.h"
#include "ui/fields/text_field.h"

namespace coutil {

namespace {

QString setName(const MeasurementSet& set) {
    const QDate date = QDate::fromString(QString::fromStdString(set.takenOn), Qt::ISODate);
    QString day = date.isValid() ? QLocale().toString(
                                       date, MeasureHead::tr("d MMM yyyy", "how a day is written"))
                                 : MeasureHead::tr("without a date");
    if (set.takenBy.empty()) return day;
    return MeasureHead::tr("%1, by %2").arg(day, QString::fromStdString(set.takenBy));
}

}  // namespace

MeasureHead::MeasureHead(FolioDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      client_(new TextField),
      sets_(new ChoiceField),
      newSet_(new QPushButton(tr("New set"))),
      date_(new DateField),
      by_(new TextField),
      note_(new TextField) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setHorizontalSpacing(12);
    form->setVerticalSpacing(6);
    form->setLabelAlignment(Qt::AlignLeft);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    client_->setPlaceholderText(tr("a name or a label of your own"));
    by_->setPlaceholderText(tr("who held the tape"));
    newSet_->setToolTip(tr("A copy of these measurements, taken today"));
    newSet_->setAccessibleName(tr("New measurement set"));
    auto* dateRow = new QHBoxLayout;
    dateRow->setSpacing(6);
    dateRow->addWidget(date_);
    dateRow->addStretch(1);
    dateRow->addWidget(newSet_);
    form->addRow(tr("Client"), client_);
    form->addRow(tr("Draft from"), sets_);
    form->addRow(tr("Taken on"), dateRow);
    form->addRow(tr("Taken by"), by_);
    form->addRow(tr("Note"), note_);
    sets_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    date_->setAccessibleName(tr("Taken on"));
    sets_->setAccessibleName(tr("Measurement set the garment is drafted from"));
    connect(client_, &QLineEdit::textEdited, this, &MeasureHead::takeClient);
    connect(sets_, &ChoiceField::chosen, this, &MeasureHead::chooseSet);
    connect(newSet_, &QPushButton::clicked, this, &MeasureHead::addSet);
    connect(date_, &DateField::edited, this, &MeasureHead::takeDate);
    connect(by_, &QLineEdit::textEdited, this, [this](const QString& text) {
        changeSet([&text](MeasurementSet& set) { set.takenBy = text.toStdString(); },
                  tr("Taken by %1").arg(text), QStringLiteral("measure/by"));
    });
    connect(note_, &QLineEdit::textEdited, this, [this](const QString& text) {
        changeSet([&text](MeasurementSet& set) { set.note = text.toStdString(); },
                  tr("Note of the measurements"), QStringLiteral("measure/note"));
    });
    for (TextField* field : {client_, by_, note_}) {
        connect(field, &TextField::left, this, [this] { document_.endMerging(); });
    }
}

void MeasureHead::refresh() {
    client_->showText(QString::fromStdString(document_.folio().client));
    showSets();
    const MeasurementSet* set = document_.measurementSet();
    for (QWidget* field : {static_cast<QWidget*>(date_), static_cast<QWidget*>(by_),
                           static_cast<QWidget*>(note_), static_cast<QWidget*>(newSet_)}) {
        field->setEnabled(set != nullptr);
    }
    if (set == nullptr) return;
    date_->setIsoDate(set->takenOn);
    by_->showText(QString::fromStdString(set->takenBy));
    note_->showText(QString::fromStdString(set->note));
}

void MeasureHead::focusClient() { client_->setFocus(Qt::OtherFocusReason); }

void MeasureHead::showSets() {
    const auto& sets = document_.folio().measurementSets;
    const MeasurementSet* shown = document_.measurementSet();
    QList<ChoiceField::Choice> choices;
    int shownIndex = -1;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        choices.append({setName(sets[i]), static_cast<int>(i)});
        if (shown != nullptr && sets[i].id == shown->id) shownIndex = static_cast<int>(i);
    }
    sets_->setChoices(choices);
    sets_->setValue(shownIndex);
    sets_->setToolTip(sets_->currentText());
    sets_->setEnabled(sets.size() > 1);
}

void MeasureHead::takeClient(const QString& client) {
    Folio after = document_.folio();
    after.client = client.toStdString();
    document_.change(after, tr("Client %1").arg(client), QStringLiteral("client"));
}

void MeasureHead::chooseSet(int index) {
    const auto& sets = document_.folio().measurementSets;
    if (index < 0 || static_cast<std::size_t>(index) >= sets.size()) return;
    const MeasurementSet& set = sets[static_cast<std::size_t>(index)];
    const std::string id = set.id;
    document_.endMerging();
    document_.changePencil([&](Pencil& pencil) { setMeasurementSet(pencil, id); },
                           tr("Draft from the measurements of %1").arg(setName(set)));
}

void MeasureHead::addSet() { document_.takeNewMeasurements(tr("New measurement set")); }

void MeasureHead::takeDate(const std::string& date) {
    changeSet([&date](MeasurementSet& set) { set.takenOn = date; },
              tr("Taken on %1").arg(date_->text()), QStringLiteral("measure/date"));
}

void MeasureHead::changeSet(const std::function<void(MeasurementSet&)>& change,
                            const QString& words, const QString& key) {
    const MeasurementSet* shown = document_.measurementSet();
    if (shown == nullptr) return;
    Folio after = document_.folio();
    const auto set = std::ranges::find(after.measurementSets, shown->id, &MeasurementSet::id);
    change(*set);
    std::ranges::stable_sort(after.measurementSets, {}, &MeasurementSet::takenOn);
    document_.change(after, words, key);
}

}  // namespace coutil
