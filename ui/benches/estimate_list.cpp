#include "ui/benches/estimate_list.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/words/trade_words.h"

namespace coutil {

EstimateList::EstimateList(QWidget* parent) : QWidget(parent), words_(quietText()) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    words_->setTextFormat(Qt::PlainText);
    column->addWidget(words_);
}

void EstimateList::showEstimates(const std::vector<Estimate>& estimates, LengthUnit unit) {
    QStringList lines;
    QStringList sources;
    for (const Estimate& estimate : estimates) {
        QStringList from;
        for (const Measurement id : estimate.from) from << measurementTerm(id);
        QString line = tr("%1 about %2 \u00b1 %3")
                           .arg(measurementTerm(estimate.id), lengthText(estimate.valueMm, unit),
                                lengthText(estimate.sdMm, unit));
        if (!from.isEmpty()) line += tr(", from %1").arg(from.join(QStringLiteral(", ")));
        lines << line;
        sources << tr("%1: %2").arg(measurementTerm(estimate.id),
                                    QString::fromStdString(estimate.source));
    }
    words_->setText(lines.isEmpty() ? tr("Everything was measured.") : lines.join('\n'));
    words_->setToolTip(sources.join('\n'));
}

QString EstimateList::text() const { return words_->text(); }

}  // namespace coutil
