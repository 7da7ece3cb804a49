#pragma once

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <functional>
#include <memory>

#include "ui/printing/pdf_file.h"

namespace coutil {

// Writing or printing pages in a thread of its own, with a way to stop it. One job at a time.
// Signals arrive in the thread of this object.
class SheetJob : public QObject {
    Q_OBJECT

  public:
    using Work = std::function<Outcome<PdfEnd>(const PdfProgress& progress)>;

    explicit SheetJob(QObject* parent = nullptr);
    ~SheetJob() override;

    void start(Work work);  // must not be running
    void stop();
    [[nodiscard]] bool isRunning() const { return isRunning_; }

  signals:
    void progressed(int done, int all);
    void ended(const coutil::Outcome<coutil::PdfEnd>& outcome);
    // From the worker to this object's thread only.
    void finished(std::shared_ptr<const coutil::Outcome<coutil::PdfEnd>> outcome, QPrivateSignal);

  private:
    QThreadPool pool_;
    std::shared_ptr<std::atomic<bool>> stop_;
    bool isRunning_ = false;
};

}  // namespace coutil
