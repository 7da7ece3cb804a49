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
    [[nodiscard]] bool isRunning() const { return isRunning_; }

  signals:
    void progressed(double done, int sheets);
    void found(const coutil::SheetPlan& plan);

  private:
    void take(int run, const Outcome<SheetPlan>& outcome);

    QThreadPool pool_;
    std::shared_ptr<std::atomic<bool>> stop_;
    int run_ = 0;
    bool isRunning_ = false;
};

}  // namespace coutil
