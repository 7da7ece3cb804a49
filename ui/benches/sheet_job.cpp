#include "ui/benches/sheet_job.h"

#include <utility>

namespace coutil {

SheetJob::SheetJob(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
    // Emitted in the worker, it arrives queued.
    connect(this, &SheetJob::finished, this,
            [this](const std::shared_ptr<const Outcome<PdfEnd>>& outcome) {
                isRunning_ = false;
                emit ended(*outcome);
            });
}

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
            emit progressed(done, all);  // queued for listeners in other threads
            return !stop->load();
        };
        emit finished(std::make_shared<const Outcome<PdfEnd>>(work(progress)), QPrivateSignal());
    });
}

}  // namespace coutil
