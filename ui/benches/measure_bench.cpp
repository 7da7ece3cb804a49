#include "ui/benches/measure_bench.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <iterator>

#include "ui/benches/card_text.h"
#include "ui/benches/measure_head.h"
#include "ui/benches/measure_scene.h"
#include "ui/benches/measurement_groups.h"
#include "ui/benches/measurement_row.h"
#include "ui/benches/tape_figure.h"
#include "ui/benches/written_reading.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr int kRowGapPx = 8;
constexpr int kGroupGapPx = 14;

QFrame* hairline() {
    auto* line = new QFrame;
    line->setFrameShape(QFrame::HLine);
    line->setFrameShadow(QFrame::Plain);
    line->setForegroundRole(QPalette::Mid);
    return line;
}

}  // namespace

MeasureBench::MeasureBench(FolioDocument& document, Table& table, QWidget* parent)
    : Bench(parent),
      document_(document),
      table_(table),
      scroll_(new QScrollArea),
      head_(new MeasureHead(document)),
      figure_(new TapeFigure),
      helpTerm_(cardHeading(QString())),
      helpHow_(new QLabel),
      helpRange_(quietText()) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setWidget(buildRows());
    column->addWidget(scroll_, 1);
    column->addWidget(hairline());
    column->addWidget(buildHelp());
    connect(&document_, &FolioDocument::folioChanged, this, &MeasureBench::refresh);
    showHelp(rows_.front()->id());
}

QString MeasureBench::benchName() const { return tr("Measure"); }

QWidget* MeasureBench::buildRows() {
    auto* list = new QWidget;
    auto* column = new QVBoxLayout(list);
    column->setContentsMargins(kCardMarginPx, kCardMarginPx, kCardMarginPx, kCardMarginPx);
    column->setSpacing(kRowGapPx);
    column->addWidget(head_);
    for (const MeasurementGroup& group : measurementGroups()) {
        addGroup(*column, group.title, group.ids);
    }
    column->addStretch(1);
    return list;
}

void MeasureBench::addGroup(QVBoxLayout& column, const QString& title,
                            const std::vector<Measurement>& ids) {
    column.addSpacing(kGroupGapPx);
    column.addWidget(cardHeading(title));
    for (const Measurement id : ids) {
        auto* row = new MeasurementRow(id);
        rows_.push_back(row);
        connectRow(row);
        column.addWidget(row);
    }
}

void MeasureBench::connectRow(MeasurementRow* row) {
    const Measurement id = row->id();
    LengthField& field = row->field();
    connect(row, &MeasurementRow::read, this,
            [this, id](std::optional<double> mm, const QString& text) { take(id, mm, text); });
    connect(&field, &LengthField::entered, this, [this, row, id] {
        showHelp(id);
        scroll_->ensureWidgetVisible(row, 0, kGroupGapPx);
        emit hint(
            tr("Type the reading; up and down change it by a step, Enter goes on to the "
               "next"));
    });
    connect(&field, &LengthField::left, this, [this] { document_.endMerging(); });
    connect(&field, &QLineEdit::returnPressed, this, [this, id] { goOn(id); });
}

QWidget* MeasureBench::buildHelp() {
    auto* help = new QWidget;
    auto* row = new QHBoxLayout(help);
    row->setContentsMargins(kCardMarginPx, 10, kCardMarginPx, 10);
    row->setSpacing(14);
    auto* words = new QVBoxLayout;
    words->setSpacing(6);
    helpTerm_->setWordWrap(true);
    helpHow_->setWordWrap(true);
    helpHow_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    words->addWidget(helpTerm_);
    words->addWidget(helpHow_, 1);
    words->addWidget(helpRange_);
    row->addWidget(figure_);
    row->addLayout(words, 1);
    return help;
}

void MeasureBench::enter() {
    isEntered_ = true;
    refresh();
    table_.fit();
    if (document_.folio().client.empty()) {
        head_->focusClient();
    } else {
        row(helped_.value_or(rows_.front()->id())).field().setFocus(Qt::OtherFocusReason);
    }
}

void MeasureBench::leave() {
    isEntered_ = false;
    table_.setFaded(false);
}

MeasurementRow& MeasureBench::row(Measurement id) {
    return **std::ranges::find(rows_, id, &MeasurementRow::id);
}

// A bench that is not entered costs nothing; it catches up when it is.
void MeasureBench::refresh() {
    if (!isEntered_) return;
    head_->refresh();
    const MeasurementSet* set = document_.measurementSet();
    const LengthUnit unit = document_.folio().unit;
    for (MeasurementRow* row : rows_) {
        row->setEnabled(set != nullptr);
        row->showReading(set != nullptr ? *set : MeasurementSet{}, unit);
        if (edited_ != row->id()) row->field().forgetOldFigure();
    }
    showFindings();
    if (helped_) showHelp(*helped_);
    showTable();
}

void MeasureBench::showFindings() {
    const GarmentOutcome& drafted = document_.drafted();
    for (MeasurementRow* row : rows_) {
        const Estimate* estimate = nullptr;
        if (drafted.body) {
            const auto& estimates = drafted.body->estimates;
            const auto found = std::ranges::find(estimates, row->id(), &Estimate::id);
            if (found != estimates.end()) estimate = &*found;
        }
        row->showFindings(drafted.problems, estimate);
    }
}

void MeasureBench::showTable() {
    const GarmentOutcome& good = document_.lastGoodDraft();
    table_.setScene(measureScene(document_, helped_));
    table_.setFaded(good.pattern && !document_.drafted().pattern);
}

void MeasureBench::take(Measurement id, std::optional<double> mm, const QString& text) {
    const MeasurementSet* shown = document_.measurementSet();
    if (shown == nullptr) return;
    MeasurementSet set = *shown;
    if (mm) {
        set.valuesMm[id] = *mm;
        set.asWritten[id] = writtenReading(text, *mm, document_.folio().unit, set.unit);
    } else {
        set.valuesMm.erase(id);
        set.asWritten.erase(id);
    }
    const auto key = keyOf(id);
    const QString words =
        mm ? tr("%1 %2").arg(measurementTerm(id), lengthText(*mm, document_.folio().unit))
           : tr("%1 taken out").arg(measurementTerm(id));
    edited_ = id;
    document_.changeMeasurements(
        set, words,
        QStringLiteral("measure/") +
            QString::fromLatin1(key.data(), static_cast<qsizetype>(key.size())));
    edited_.reset();
}

void MeasureBench::showHelp(Measurement id) {
    const bool isNew = helped_ != id;
    helped_ = id;
    figure_->showTape(id);
    figure_->setAccessibleName(tr("Where the tape goes: %1").arg(measurementTerm(id)));
    const MeasurementInfo& info = infoOf(id);
    const LengthUnit unit = document_.folio().unit;
    helpTerm_->setText(measurementTerm(id));
    helpHow_->setText(measurementHow(id));
    helpRange_->setText(
        tr("Usually %1 to %2")
            .arg(lengthText(info.usualLowestMm, unit), lengthText(info.usualHighestMm, unit)));
    if (isNew && isEntered_ && !document_.lastGoodDraft().pattern) showTable();
}

void MeasureBench::goOn(Measurement id) {
    const auto here = std::ranges::find(rows_, id, &MeasurementRow::id);
    const auto next = std::next(here);
    if (next != rows_.end()) (*next)->field().setFocus(Qt::TabFocusReason);
}

}  // namespace coutil
