#include "ui/benches/plan_search.h"

#include <utility>

namespace coutil {

namespace {

// The same drawing gives the same sheets on every machine and every day.
constexpr std::uint32_t kSeed = 1;
constexpr double kEffort = 1;
constexpr double kProgressStep = 0.01;

}  // namespace

PlanSearch::PlanSearch(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
    // Emitted in the worker, these arrive queued; what a run before the last one tells is dropped.
    connect(this, &PlanSearch::reported, this, [this](int run, double done, int sheets) {
        if (run == run_) emit progressed(done, sheets);
    });
    connect(this, &PlanSearch::ended, this,
            [this](int run, const std::shared_ptr<const Outcome<SheetPlan>>& outcome) {
                take(run, *outcome);
            });
}

PlanSearch::~PlanSearch() {
    cancel();
    pool_.waitForDone();
}

void PlanSearch::cancel() {
    if (order_) order_->store(Order::drop);
    ++run_;
    isRunning_ = false;
}

void PlanSearch::enough() {
    if (order_ && isRunning_) order_->store(Order::stop);
}

void PlanSearch::start(std::vector<Tracing> tracings, const SheetOptions& options) {
    cancel();
    order_ = std::make_shared<std::atomic<Order>>(Order::search);
    isRunning_ = true;
    const int run = run_;
    pool_.start([this, run, order = order_, options, pieces = std::move(tracings)] {
        double told = -1;
        const auto progress = [&](double done, int sheets) {
            if (done - told >= kProgressStep) {
                told = done;
                emit reported(run, done, sheets, QPrivateSignal());
            }
            return order->load() == Order::search;
        };
        if (order->load() == Order::drop) return;
        const auto outcome = std::make_shared<const Outcome<SheetPlan>>(
            planFewerSheets(pieces, options, kSeed, kEffort, progress));
        if (order->load() != Order::drop) emit ended(run, outcome, QPrivateSignal());
    });
}

void PlanSearch::take(int run, const Outcome<SheetPlan>& outcome) {
    if (run != run_) return;
    isRunning_ = false;
    if (outcome) {
        emit found(*outcome);
    } else {
        emit foundNothing();
    }
}

}  // namespace coutil
