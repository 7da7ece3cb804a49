#include "ui/benches/measurement_row.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QStringList>
#include <algorithm>

#include "ui/fields/text_colours.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

constexpr int kPauseMs = 700;

QString estimateText(const Estimate& estimate, LengthUnit unit) {
    QStringList from;
    for (const Measurement id : estimate.from) from.append(measurementTerm(id));
    const QString spread = lengthText(estimate.sdMm, unit);
    if (from.isEmpty()) return MeasurementRow::tr("estimated ± %1, the average").arg(spread);
    return MeasurementRow::tr("estimated ± %1, from %2")
        .arg(spread, from.join(QStringLiteral(", ")));
}

}  // namespace

MeasurementRow::MeasurementRow(Measurement id, QWidget* parent)
    : QWidget(parent),
      id_(id),
      term_(new QLabel(measurementTerm(id))),
      mark_(new QLabel),
      field_(new LengthField),
      sentence_(new QLabel) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(2);
    term_->setWordWrap(true);
    term_->setBuddy(field_);
    field_->setAccessibleName(measurementTerm(id));
    field_->setMayBeNegative(false);
    field_->setStepsWhenEmpty(false);
    field_->setJudge([this](double mm) { return judge(mm); });
    sentence_->setWordWrap(true);
    sentence_->hide();
    grid->addWidget(term_, 0, 0);
    grid->addWidget(mark_, 0, 1);
    grid->addWidget(field_, 0, 2);
    grid->addWidget(sentence_, 1, 0, 1, 3);
    grid->setColumnStretch(0, 1);
    pause_.setSingleShot(true);
    pause_.setInterval(kPauseMs);
    connect(&pause_, &QTimer::timeout, this, &MeasurementRow::showSentence);
    connect(field_, &LengthField::unreadable, this, &MeasurementRow::refuse);
    connect(field_, &LengthField::left, this, &MeasurementRow::showSentence);
    connect(field_, &LengthField::edited, this,
            [this](std::optional<double> mm, const QString& text) {
                accept();
                emit read(mm, text);
            });
}

QString MeasurementRow::sentence() const {
    return sentence_->isHidden() ? QString() : sentence_->text();
}

// One reading alone: only what no body has is refused; doubts come with the draft.
std::optional<Problem> MeasurementRow::judge(double mm) const {
    MeasurementSet alone;
    alone.valuesMm[id_] = mm;
    for (const Problem& problem : checkMeasurements(alone)) {
        if (isError(problem)) return problem;
    }
    return std::nullopt;
}

void MeasurementRow::refuse(const Problem& problem) {
    const bool wasShown = refusal_ && !pause_.isActive();
    refusal_ = problem;
    if (refusal_->subject.empty()) refusal_->subject = keyOf(id_);
    if (wasShown) {
        showSentence();
    } else {
        pause_.start();
    }
}

void MeasurementRow::accept() {
    pause_.stop();
    refusal_.reset();
    showSentence();
}

void MeasurementRow::showReading(const MeasurementSet& set, LengthUnit unit) {
    field_->setUnit(unit);
    const auto value = set.valuesMm.find(id_);
    const auto reading =
        value != set.valuesMm.end() ? std::optional<double>(value->second) : std::nullopt;
    if (refusal_ && reading != readingMm_) accept();  // undone, or another set: the text is gone
    readingMm_ = reading;
    if (!reading) {
        field_->setValueMm(std::nullopt);
        return;
    }
    const auto written = set.asWritten.find(id_);
    if (written == set.asWritten.end()) {
        field_->setValueMm(reading);
    } else {
        field_->setWrittenText(QString::fromStdString(written->second), *reading);
    }
}

void MeasurementRow::showFindings(const std::vector<Problem>& problems, const Estimate* estimate) {
    isMissing_ = false;
    hasStandIn_ = false;
    finding_.clear();
    findingTone_ = Tone::quiet;
    for (const Problem& problem : problems) takeFinding(problem);
    field_->setSuggestionMm(estimate != nullptr ? std::optional(estimate->valueMm) : std::nullopt);
    if (estimate != nullptr && finding_.isEmpty()) {
        finding_ = estimateText(*estimate, field_->unit());
    }
    showMark();
    if (!refusal_) showSentence();
}

// Of several the first error, else the first warning. What is missing is said by the mark beside
// the field: an empty card would else be a wall of sentences.
void MeasurementRow::takeFinding(const Problem& problem) {
    const auto key = keyOf(id_);
    if (problem.code == ProblemCode::measurementMissing) {
        const bool isNamed = problem.subject == key || problem.detail == key;
        isMissing_ = isMissing_ || isNamed;
        hasStandIn_ = hasStandIn_ || (isNamed && !problem.detail.empty());
        return;
    }
    const bool isWorse = isError(problem) ? findingTone_ != Tone::error : finding_.isEmpty();
    if (problem.subject != key || !isWorse) return;
    finding_ = problemSentence(problem, field_->unit());
    findingTone_ = isError(problem) ? Tone::error : Tone::warning;
}

void MeasurementRow::showSentence() {
    pause_.stop();
    const QString text = refusal_ ? problemSentence(*refusal_, field_->unit()) : finding_;
    const Tone tone = refusal_ ? Tone::error : findingTone_;
    const QPalette general = palette();
    const QColor colour = tone == Tone::error     ? errorColour(general)
                          : tone == Tone::warning ? warningColour(general)
                                                  : quietColour(general);
    if (sentence_->text() != text) sentence_->setText(text);
    sentence_->setPalette(withText(general, colour));
    sentence_->setVisible(!text.isEmpty());
    field_->setAccessibleDescription(text);
}

QString MeasurementRow::mark() const { return mark_->text(); }

void MeasurementRow::showMark() {
    const bool isNeededAndThere = infoOf(id_).isNeededForCorset && readingMm_.has_value();
    QString words;
    if (isMissing_) words = hasStandIn_ ? tr("one of two") : tr("needed");
    if (isNeededAndThere) words = tr("needed");
    mark_->setText(words);
    QFont font = mark_->font();
    font.setBold(isMissing_);
    mark_->setFont(font);
    mark_->setPalette(
        withText(palette(), isMissing_ ? warningColour(palette()) : quietColour(palette())));
}

void MeasurementRow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::PaletteChange) return;
    showMark();
    if (!sentence_->isHidden()) showSentence();
}

}  // namespace coutil
