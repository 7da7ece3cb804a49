#include "ui/window/job_line.h"

#include <QHBoxLayout>
#include <QMenuBar>
#include <QPainter>

#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"
#include "ui/window/bench_button.h"
#include "ui/window/garment_line.h"

namespace coutil {

namespace {
constexpr int kHeightPx = 42;
}  // namespace

JobLine::JobLine(FolioDocument& document, QMenuBar* menus, QWidget* parent)
    : QWidget(parent),
      document_(document),
      garments_(new GarmentLine(document)),
      benchRow_(new QWidget),
      benchLayout_(new QHBoxLayout(benchRow_)),
      unit_(new ChoiceField) {
    setFixedHeight(kHeightPx);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(4, 0, 12, 1);
    row->setSpacing(16);
    menus->setNativeMenuBar(false);
    menus->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    row->addWidget(menus);
    row->addWidget(garments_);
    row->addStretch(1);
    benchLayout_->setContentsMargins(0, 0, 0, 0);
    benchLayout_->setSpacing(2);
    row->addWidget(benchRow_);
    row->addStretch(1);
    unit_->setObjectName(QStringLiteral("unit"));
    unit_->setMinimumContentsLength(4);
    unit_->setAccessibleName(tr("Unit of lengths"));
    unit_->setToolTip(tr("The unit that lengths are shown in and typed in when none is named"));
    unit_->setChoices({{tr("mm"), static_cast<int>(LengthUnit::millimetre)},
                       {tr("cm"), static_cast<int>(LengthUnit::centimetre)},
                       {tr("inch"), static_cast<int>(LengthUnit::inch)}});
    row->addWidget(unit_);
    connect(unit_, &ChoiceField::chosen, this, &JobLine::takeUnit);
    connect(&document_, &FolioDocument::folioChanged, this, &JobLine::showDocument);
    showDocument();
}

void JobLine::addBench(const QString& name, int number) {
    auto* button = new BenchButton(name);
    button->setToolTip(tr("%1 (key %2)").arg(name).arg(number));
    const int index = static_cast<int>(benches_.size());
    connect(button, &QAbstractButton::clicked, this, [this, index] { emit benchChosen(index); });
    benchLayout_->addWidget(button);
    benches_.append(button);
}

void JobLine::showBench(int index) {
    for (int i = 0; i < benches_.size(); ++i) benches_[i]->setChecked(i == index);
}

GarmentLine& JobLine::garments() { return *garments_; }

void JobLine::showDocument() {
    const bool isOpen = document_.isOpen();
    garments_->setVisible(isOpen);
    benchRow_->setVisible(isOpen);
    unit_->setVisible(isOpen);
    unit_->setValue(static_cast<int>(document_.folio().unit));
}

void JobLine::takeUnit(int unit) {
    Folio after = document_.folio();
    after.unit = static_cast<LengthUnit>(unit);
    document_.endMerging();
    document_.change(after, tr("Lengths in %1").arg(unit_->currentText()));
}

void JobLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

}  // namespace coutil
