#include "ui/benches/plan_search.h"

#include <QMetaObject>
#include <utility>

namespace coutil {

namespace {

// The same drawing gives the same sheets on every machine and every day.
constexpr std::uint32_t kSeed = 1;
constexpr double kEffort = 1;
constexpr double kProgressStep = 0.01;

}  // namespace

PlanSearch::PlanSearch(QObject* parent) : QObject(parent) { pool_.setMaxThreadCount(1); }

PlanSearch::~PlanSearch() {
    cancel();
    pool_.waitForDone();
}

void PlanSearch::cancel() {
    if (stop_) stop_->store(true);
    ++run_;
    isRunning_ = false;
}

void PlanSearch::start(std::vector<Tracing> tracings, const SheetOptions& options) {
    cancel();
    stop_ = std::make_shared<std::atomic<bool>>(false);
    isRunning_ = true;
    const int run = run_;
    pool_.start([this, run, stop = stop_, options, pieces = std::move(tracings)] {
        double told = -1;
        const auto progress = [&](double done, int sheets) {
            if (done - told >= kProgressStep) {
                told = done;
                QMetaObject::invokeMethod(
                    this,
                    [this, run, done, sheets] {
                        if (run == run_) emit progressed(done, sheets);
                    },
                    Qt::QueuedConnection);
            }
            return !stop->load();
        };
        if (stop->load()) return;
        Outcome<SheetPlan> outcome = planFewerSheets(pieces, options, kSeed, kEffort, progress);
        if (stop->load()) return;
        QMetaObject::invokeMethod(
            this, [this, run, outcome = std::move(outcome)] { take(run, outcome); },
            Qt::QueuedConnection);
    });
}

void PlanSearch::take(int run, const Outcome<SheetPlan>& outcome) {
    if (run != run_) return;
    isRunning_ = false;
    if (outcome) emit found(*outcome);
}

}  // namespace coutil
