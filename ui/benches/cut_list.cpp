#include "ui/benches/cut_list.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/benches/tracing_scene.h"

namespace coutil {

CutList::CutList(QWidget* parent) : QWidget(parent), lines_(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    lines_->setWordWrap(true);
    column->addWidget(lines_);
}

void CutList::showTracings(const std::vector<Tracing>& tracings) {
    QStringList lines;
    int pieces = 0;
    for (const Tracing& tracing : tracings) {
        lines << tr("Panel %1: %2").arg(QString::fromStdString(tracing.panel), cutWords(tracing));
        pieces += tracing.cutCount;
    }
    if (!lines.isEmpty()) lines << tr("%n piece(s) in all", nullptr, pieces);
    lines_->setText(lines.join('\n'));
}

QString CutList::text() const { return lines_->text(); }

}  // namespace coutil
