#include "ui/benches/job_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "ui/benches/card_text.h"

namespace coutil {

namespace {
constexpr int kSteps = 1000;
}

JobBar::JobBar(const QString& stopWords, QWidget* parent)
    : QWidget(parent),
      words_(quietText()),
      bar_(new QProgressBar),
      stop_(new QPushButton(stopWords)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(words_);
    auto* row = new QHBoxLayout;
    bar_->setRange(0, kSteps);
    bar_->setTextVisible(false);
    bar_->setMaximumHeight(10);
    row->addWidget(bar_, 1);
    row->addWidget(stop_);
    column->addLayout(row);
    connect(stop_, &QPushButton::clicked, this, &JobBar::stopped);
    end();
}

void JobBar::begin(const QString& words) {
    show(0, words);
    setVisible(true);
}

void JobBar::show(double done, const QString& words) {
    words_->setText(words);
    bar_->setAccessibleName(words);
    bar_->setValue(static_cast<int>(std::lround(done * kSteps)));
}

void JobBar::end() { setVisible(false); }

}  // namespace coutil
