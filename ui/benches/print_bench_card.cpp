// How the Print card is put together.
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/correction_part.h"
#include "ui/benches/fold_out.h"
#include "ui/benches/job_bar.h"
#include "ui/benches/paper_part.h"
#include "ui/benches/plan_search.h"
#include "ui/benches/print_bench.h"
#include "ui/benches/print_settings.h"
#include "ui/benches/sheet_job.h"
#include "ui/benches/sheet_map.h"

namespace coutil {

void PrintBench::buildCard() {
    paper_ = new PaperPart;
    correction_ = new CorrectionPart;
    client_ = new QCheckBox(tr("Print the client's name on the sheets"));
    client_->setChecked(storedPrintsClient(*settings_));
    client_->setObjectName(QStringLiteral("printsClient"));
    map_ = new SheetMap;
    count_ = new QLabel;
    count_->setWordWrap(true);
    count_->setObjectName(QStringLiteral("sheetCount"));
    pageWords_ = quietText();
    whole_ = new QPushButton(tr("Whole drawing"));
    searchBar_ = new JobBar(tr("Enough"));
    searchBar_->setObjectName(QStringLiteral("searchBar"));
    searchBar_->stopButton().setAccessibleName(tr("Stop looking for fewer sheets"));
    jobBar_ = new JobBar(tr("Stop"));
    jobBar_->stopButton().setAccessibleName(tr("Stop writing the sheets"));
    export_ = new QPushButton(tr("Export PDF..."));
    export_->setObjectName(QStringLiteral("exportPdf"));
    print_ = new QPushButton(tr("Print..."));
    print_->setObjectName(QStringLiteral("print"));
    printFirst_ = new QPushButton(tr("Print the first page..."));
    printFirst_->setObjectName(QStringLiteral("printFirst"));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kCardMarginPx, 0, kCardMarginPx, kCardMarginPx);
    column->setSpacing(4);
    column->addWidget(cardHeading(tr("Sheets")));
    column->addWidget(count_);
    column->addWidget(searchBar_);
    column->addWidget(map_);
    column->addWidget(pageWords_);
    column->addWidget(whole_, 0, Qt::AlignLeft);
    column->addWidget(cardHeading(tr("Paper")));
    column->addWidget(paper_);
    column->addWidget(client_);
    column->addWidget(cardHeading(tr("Correction of the printer")));
    column->addWidget(correction_);
    column->addWidget(cardHeading(tr("On paper")));
    column->addWidget(printFirst_);
    auto* row = new QHBoxLayout;
    row->addWidget(export_, 1);
    row->addWidget(print_, 1);
    column->addLayout(row);
    column->addWidget(jobBar_);
    column->addStretch(1);

    connect(paper_, &PaperPart::edited, this, &PrintBench::takeOptions);
    connect(correction_, &CorrectionPart::corrected, this, [this](const Correction& correction) {
        SheetOptions wanted = options_;
        wanted.scaleX = correction.x;
        wanted.scaleY = correction.y;
        takeOptions(wanted);
    });
    connect(client_, &QCheckBox::toggled, this, [this](bool isOn) {
        storePrintsClient(*settings_, isOn);
        showSceneNow();
    });
    connect(map_, &SheetMap::pageChosen, this, &PrintBench::openPage);
    connect(whole_, &QPushButton::clicked, this, [this] { openPage(-1); });
    connect(searchBar_, &JobBar::stopped, search_, &PlanSearch::enough);
    connect(jobBar_, &JobBar::stopped, this, [this] { job_->stop(); });
    connect(export_, &QPushButton::clicked, this, &PrintBench::exportPdf);
    connect(print_, &QPushButton::clicked, this, [this] { print(false); });
    connect(printFirst_, &QPushButton::clicked, this, [this] { print(true); });
    connect(job_, &SheetJob::progressed, this, [this](int done, int all) {
        jobBar_->show(all > 0 ? static_cast<double>(done) / all : 0,
                      tr("Page %1 of %2").arg(done).arg(all));
    });
    connect(job_, &SheetJob::ended, this, [this](const Outcome<PdfEnd>& outcome) {
        tellEnd(outcome ? nullptr : &outcome.problems.front(),
                outcome && *outcome == PdfEnd::stopped);
    });
}

}  // namespace coutil
