#include "ui/benches/sheet_job.h"

#include <QMetaObject>
#include <utility>

namespace coutil {

SheetJob::SheetJob(QObject* parent) : QObject(parent) { pool_.setMaxThreadCount(1); }

SheetJob::~SheetJob() {
    stop();
    pool_.waitForDone();
}

void SheetJob::stop() {
    if (stop_) stop_->store(true);
}

void SheetJob::start(Work work) {
    stop_ = std::make_shared<std::atomic<bool>>(false);
    isRunning_ = true;
    pool_.start([this, stop = stop_, work = std::move(work)] {
        const PdfProgress progress = [&](int done, int all) {
            QMetaObject::invokeMethod(
                this, [this, done, all] { emit progressed(done, all); }, Qt::QueuedConnection);
            return !stop->load();
        };
        const Outcome<PdfEnd> outcome = work(progress);
        QMetaObject::invokeMethod(
            this,
            [this, outcome] {
                isRunning_ = false;
                emit ended(outcome);
            },
            Qt::QueuedConnection);
    });
}

}  // namespace coutil
