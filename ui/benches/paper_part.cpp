#include "ui/benches/paper_part.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <cmath>

#include "ui/fields/choice_field.h"
#include "ui/fields/length_field.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/sheet_words.h"

namespace coutil {

namespace {

constexpr int kOwnSize = -2;
constexpr double kUmPerMm = 1000;

long long micrometres(double mm) { return std::llround(mm * kUmPerMm); }
double millimetres(long long um) { return static_cast<double>(um) / kUmPerMm; }

int knownIndex(const Paper& paper) {
    const auto known = knownPapers();
    for (std::size_t i = 0; i < known.size(); ++i) {
        if (known[i] == paper) return static_cast<int>(i);
    }
    return kOwnSize;
}

}  // namespace

PaperPart::PaperPart(QWidget* parent)
    : QWidget(parent),
      paper_(new ChoiceField),
      ownSize_(new QWidget),
      ownWidth_(new LengthField),
      ownHeight_(new LengthField),
      orientation_(new ChoiceField),
      margin_(new LengthField),
      overlap_(new LengthField),
      mirrored_(new QCheckBox(tr("Print the mirrored twin of every pair too"))),
      complaint_(new QLabel) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    QList<ChoiceField::Choice> papers;
    int index = 0;
    for (const Paper& paper : knownPapers()) {
        papers.append({paperName(paper), index++});
    }
    papers.append({tr("Own size"), kOwnSize});
    paper_->setChoices(papers);
    paper_->setAccessibleName(tr("Paper"));
    paper_->setObjectName(QStringLiteral("paper"));
    form->addRow(tr("Paper"), paper_);
    auto* own = new QHBoxLayout(ownSize_);
    own->setContentsMargins(0, 0, 0, 0);
    ownWidth_->setAccessibleName(tr("Own paper, across"));
    ownHeight_->setAccessibleName(tr("Own paper, up"));
    own->addWidget(ownWidth_);
    own->addWidget(new QLabel(QStringLiteral("\u00d7")));
    own->addWidget(ownHeight_);
    form->addRow(QString(), ownSize_);
    orientation_->setChoices({{tr("Whichever needs fewer"), int(Orientation::whicheverFewer)},
                              {tr("Upright"), int(Orientation::portrait)},
                              {tr("Across"), int(Orientation::landscape)}});
    orientation_->setAccessibleName(tr("Orientation"));
    orientation_->setObjectName(QStringLiteral("orientation"));
    form->addRow(tr("Orientation"), orientation_);
    addLength(*form, *margin_, tr("Margin"));
    addLength(*form, *overlap_, tr("Overlap"));
    margin_->setObjectName(QStringLiteral("margin"));
    overlap_->setObjectName(QStringLiteral("overlap"));
    mirrored_->setObjectName(QStringLiteral("mirroredToo"));
    form->addRow(mirrored_);
    complaint_->setWordWrap(true);
    complaint_->setObjectName(QStringLiteral("paperComplaint"));
    complaint_->hide();
    form->addRow(complaint_);
    connect(paper_, &ChoiceField::chosen, this, &PaperPart::choosePaper);
    connect(ownWidth_, &LengthField::edited, this, &PaperPart::takeOwnSize);
    connect(ownHeight_, &LengthField::edited, this, &PaperPart::takeOwnSize);
    connect(orientation_, &ChoiceField::chosen, this, [this](int chosen) {
        SheetOptions wanted = options_;
        wanted.orientation = Orientation(chosen);
        offer(wanted);
    });
    connect(margin_, &LengthField::edited, this, [this](std::optional<double> mm) {
        SheetOptions wanted = options_;
        if (mm) wanted.marginUm = micrometres(*mm);
        offer(wanted);
    });
    connect(overlap_, &LengthField::edited, this, [this](std::optional<double> mm) {
        SheetOptions wanted = options_;
        if (mm) wanted.overlapUm = micrometres(*mm);
        offer(wanted);
    });
    connect(mirrored_, &QCheckBox::toggled, this, [this](bool isOn) {
        SheetOptions wanted = options_;
        wanted.mirroredToo = isOn;
        offer(wanted);
    });
}

void PaperPart::addLength(QFormLayout& form, LengthField& field, const QString& words) {
    field.setMayBeNegative(false);
    field.setAccessibleName(words);
    form.addRow(words, &field);
    connect(&field, &LengthField::unreadable, this, [this](const Problem& problem) {
        complaint_->setText(problemSentence(problem, unit_));
        complaint_->show();
    });
    connect(&field, &LengthField::left, this, [this] { showOptions(options_, unit_); });
}

void PaperPart::showOptions(const SheetOptions& options, LengthUnit unit) {
    options_ = options;
    unit_ = unit;
    const int known = knownIndex(options.paper);
    paper_->setValue(known);
    ownSize_->setVisible(known == kOwnSize);
    for (LengthField* field : {ownWidth_, ownHeight_, margin_, overlap_}) field->setUnit(unit);
    ownWidth_->setValueMm(millimetres(options.paper.widthUm));
    ownHeight_->setValueMm(millimetres(options.paper.heightUm));
    orientation_->setValue(int(options.orientation));
    margin_->setValueMm(millimetres(options.marginUm));
    overlap_->setValueMm(millimetres(options.overlapUm));
    // One big page is not turned and joins nothing.
    orientation_->setEnabled(!options.paper.isOnePage);
    overlap_->setEnabled(!options.paper.isOnePage);
    const QSignalBlocker quiet(mirrored_);
    mirrored_->setChecked(options.mirroredToo);
}

void PaperPart::choosePaper(int index) {
    if (index == kOwnSize) {
        ownSize_->show();
        takeOwnSize();
        return;
    }
    ownSize_->hide();
    SheetOptions wanted = options_;
    wanted.paper = knownPapers()[static_cast<std::size_t>(index)];
    offer(wanted);
}

void PaperPart::takeOwnSize() {
    const auto width = ownWidth_->valueMm();
    const auto height = ownHeight_->valueMm();
    if (!width || !height) return;
    const QString size = QStringLiteral("%1x%2").arg(*width, 0, 'f', 3).arg(*height, 0, 'f', 3);
    const Outcome<Paper> paper = paperNamed(size.toStdString());
    if (!paper) {
        complaint_->setText(problemSentence(paper.problems.front(), unit_));
        complaint_->show();
        return;
    }
    SheetOptions wanted = options_;
    wanted.paper = *paper;
    offer(wanted);
}

void PaperPart::offer(const SheetOptions& options) {
    const std::vector<Problem> problems = checkSheetOptions(options);
    complaint_->setVisible(!problems.empty());
    if (!problems.empty()) {
        complaint_->setText(problemSentence(problems.front(), unit_));
        return;
    }
    if (options == options_) return;
    options_ = options;
    emit edited(options_);
}

}  // namespace coutil
