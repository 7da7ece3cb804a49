#include "ui/window/status_line.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPushButton>

namespace coutil {

namespace {

constexpr int kHeightPx = 26;

QLabel* figure(QHBoxLayout* row) {
    auto* label = new QLabel;
    row->addWidget(label);
    return label;
}

}  // namespace

StatusLine::StatusLine(QWidget* parent) : QWidget(parent) {
    setFixedHeight(kHeightPx);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 0, 8, 0);
    row->setSpacing(18);
    hint_ = figure(row);
    hint_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    row->setStretch(0, 1);
    position_ = figure(row);
    zoom_ = figure(row);
    problems_ = new QPushButton;
    problems_->setFlat(true);
    problems_->setFixedHeight(kHeightPx - 4);
    row->addWidget(problems_);
    connect(problems_, &QPushButton::clicked, this, &StatusLine::problemsWanted);
    showProblems(0);
}

void StatusLine::showHint(const QString& text) {
    hintText_ = text;
    elideHint();
}

void StatusLine::showPosition(const QString& text) { position_->setText(text); }

void StatusLine::showZoom(double percent) {
    zoom_->setText(percent > 0 ? tr("%1 %").arg(QLocale().toString(percent, 'f', 0)) : QString());
}

void StatusLine::showProblems(int count) {
    problems_->setText(tr("problems %1").arg(count));
    problems_->setAccessibleName(tr("%n problem(s)", nullptr, count));
    problems_->setEnabled(count > 0);
}

void StatusLine::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    elideHint();
}

void StatusLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, 0, width(), 0);
}

void StatusLine::elideHint() {
    hint_->setText(hint_->fontMetrics().elidedText(hintText_, Qt::ElideRight, hint_->width()));
    hint_->setToolTip(hintText_);
}

}  // namespace coutil
