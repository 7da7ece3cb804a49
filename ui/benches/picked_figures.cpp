#include "ui/benches/picked_figures.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/pattern_scene.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

QString figure(double mm, LengthUnit unit) {
    const char mark = QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.';
    return QString::fromStdString(writtenLength(mm, unit, mark));
}

}  // namespace

PickedFigures::PickedFigures(QWidget* parent)
    : QWidget(parent),
      grid_(new QGridLayout),
      heading_(cardHeading({})),
      hint_(quietText(tr("Click a panel, or press Tab on the table, for its figures."))) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(heading_);
    column->addWidget(hint_);
    column->addLayout(grid_);
    grid_->setHorizontalSpacing(10);
    grid_->setVerticalSpacing(2);
    grid_->setColumnStretch(0, 1);
    showNothing();
}

QString PickedFigures::heading() const { return heading_->text(); }

void PickedFigures::addLine(const QString& name, const QStringList& figures) {
    for (int column = 0; column < 4; ++column) {
        if (used_ == cells_.size()) {
            auto* cell = new QLabel;
            cell->setAlignment(column == 0 ? Qt::AlignLeft : Qt::AlignRight);
            cell->setWordWrap(column == 0);  // the maker's own names may be long
            grid_->addWidget(cell, lines_, column);
            cells_.push_back(cell);
        }
        QLabel* cell = cells_[used_++];
        cell->setText(column == 0 ? name : figures.value(column - 1));
        cell->show();
    }
    ++lines_;
}

void PickedFigures::showNothing() {
    heading_->setText(tr("Picked panel"));
    hint_->show();
    for (QLabel* cell : cells_) cell->hide();
}

void PickedFigures::showPanel(const Panel& panel, LengthUnit unit) {
    heading_->setText(tr("Panel %1").arg(QString::fromStdString(panel.name)));
    hint_->hide();
    used_ = 0;
    lines_ = 0;
    addLine(unitName(unit), {tr("Length"), tr("Above"), tr("Below")});
    for (const Edge& edge : panel.edges) {
        QStringList figures{figure(lengthMm(edge.path), unit)};
        if (edge.waistMarkAtMm) {
            const SeamLengths parts = seamLengthsOf(edge);
            figures << figure(parts.aboveWaistMm, unit) << figure(parts.belowWaistMm, unit);
        }
        addLine(edgeName(edge.name), figures);
    }
    for (const LevelLine& level : panel.levels) {
        addLine(tr("Width at %1").arg(levelName(level.level)),
                {figure((level.back - level.front).norm(), unit)});
    }
    addLine(tr("Area"), {areaText(panel, unit)});
    while (used_ < cells_.size()) cells_[used_++]->hide();
}

}  // namespace coutil
