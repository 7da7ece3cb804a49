#pragma once

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <memory>
#include <vector>

#include "core/sheets/sheet_plan.h"

namespace coutil {

// Looks for the arrangement with fewer sheets in a thread of its own. One search at a time: a new
// one, and cancel(), stop the one before, whose findings are dropped. Signals arrive in the thread
// of this object.
class PlanSearch : public QObject {
    Q_OBJECT

  public:
    explicit PlanSearch(QObject* parent = nullptr);
    ~PlanSearch() override;

    void start(std::vector<Tracing> tracings, const SheetOptions& options);
    void cancel();
    void enough();  // ends the search; the best so far arrives as found()
    [[nodiscard]] bool isRunning() const { return isRunning_; }

  signals:
    void progressed(double done, int sheets);
    void found(const coutil::SheetPlan& plan);
    void foundNothing();
    // From the worker to this object's thread only.
    void reported(int run, double done, int sheets, QPrivateSignal);
    void ended(int run, std::shared_ptr<const coutil::Outcome<coutil::SheetPlan>> outcome,
               QPrivateSignal);

  private:
    void take(int run, const Outcome<SheetPlan>& outcome);

    QThreadPool pool_;
    enum class Order { search, stop, drop };
    std::shared_ptr<std::atomic<Order>> order_;
    int run_ = 0;
    bool isRunning_ = false;
};

}  // namespace coutil
