#include "ui/benches/correction_part.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/print_settings.h"
#include "ui/fields/length_field.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/sheet_words.h"

namespace coutil {

namespace {
constexpr double kSquareMm = 100;
}

CorrectionPart::CorrectionPart(QWidget* parent)
    : QWidget(parent),
      use_(new QPushButton(tr("Use"))),
      none_(new QPushButton(tr("No correction"))),
      words_(quietText()),
      complaint_(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(
        quietText(tr("Print the first page alone and measure its 100 mm square. The "
                     "paper is held upright.")));
    auto* form = new QFormLayout;
    across_ = addMeasured(*form, tr("Measured across"));
    up_ = addMeasured(*form, tr("Measured up"));
    across_->setObjectName(QStringLiteral("measuredAcross"));
    up_->setObjectName(QStringLiteral("measuredUp"));
    column->addLayout(form);
    auto* row = new QHBoxLayout;
    use_->setObjectName(QStringLiteral("useCorrection"));
    use_->setAccessibleName(tr("Use the measured correction"));
    row->addWidget(use_);
    row->addWidget(none_);
    row->addStretch(1);
    column->addLayout(row);
    complaint_->setWordWrap(true);
    complaint_->hide();
    complaint_->setObjectName(QStringLiteral("correctionComplaint"));
    column->addWidget(complaint_);
    column->addWidget(words_);
    connect(use_, &QPushButton::clicked, this, &CorrectionPart::use);
    connect(none_, &QPushButton::clicked, this, [this] {
        complaint_->hide();
        emit corrected({});
    });
}

LengthField* CorrectionPart::addMeasured(QFormLayout& form, const QString& words) {
    auto* field = new LengthField;
    field->setUnit(LengthUnit::millimetre);
    field->setMayBeNegative(false);
    field->setSuggestionMm(kSquareMm);
    field->setAccessibleName(words);
    form.addRow(words, field);
    connect(field, &LengthField::returnPressed, this, &CorrectionPart::use);
    return field;
}

void CorrectionPart::showCorrection(const Paper& paper, const Correction& inForce,
                                    LengthUnit unit) {
    inForce_ = inForce;
    unit_ = unit;
    const auto percent = [](double factor) { return QLocale().toString(factor * 100, 'f', 2); };
    words_->setText(inForce.x == 1 && inForce.y == 1
                        ? tr("No correction is in force for %1.").arg(paperName(paper))
                        : tr("In force for %1: %2 % across, %3 % up.")
                              .arg(paperName(paper), percent(inForce.x), percent(inForce.y)));
    none_->setEnabled(inForce.x != 1 || inForce.y != 1);
}

void CorrectionPart::use() {
    if (!across_->isReadable() || !up_->isReadable()) return;
    const double across = across_->valueMm().value_or(kSquareMm);
    const double up = up_->valueMm().value_or(kSquareMm);
    SheetOptions judged;
    judged.scaleX = across > 0 ? correctedFactor(inForce_.x, across) : 0;
    judged.scaleY = up > 0 ? correctedFactor(inForce_.y, up) : 0;
    const std::vector<Problem> problems = checkSheetOptions(judged);
    complaint_->setVisible(!problems.empty());
    if (!problems.empty()) {
        complaint_->setText(problemSentence(problems.front(), unit_));
        return;
    }
    across_->setValueMm(std::nullopt);
    up_->setValueMm(std::nullopt);
    emit corrected({judged.scaleX, judged.scaleY});
}

}  // namespace coutil
