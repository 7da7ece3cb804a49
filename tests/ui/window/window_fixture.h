#pragma once

#include <QTemporaryDir>
#include <memory>

#include <gtest/gtest.h>

#include "core/measurements/measurement.h"
#include "ui/window/main_window.h"

namespace coutil {

class MeasureBench;
class MeasurementRow;

// The real window with queued answers, in a home of its own: settings, state and folios of one test
// are no other's.
class WindowTest : public testing::Test {
  protected:
    void SetUp() override;

    // Another window over the same home, as the next start of the program would open it.
    void openWindow();
    // The program dies: the window goes without being closed, unsaved work and all.
    void die();

    [[nodiscard]] MeasureBench& measure();
    [[nodiscard]] MeasurementRow& row(Measurement id);
    // Clicks into a measurement's field, types over what is there, and leaves it with Tab.
    void type(Measurement id, const QString& text);
    // The demo singer's readings, typed one by one into the Measure bench.
    void typeSinger();
    [[nodiscard]] QString path(const QString& name) const;

    QTemporaryDir home_;
    QueuedAnswers* answers_ = nullptr;  // the window's
    std::unique_ptr<MainWindow> window_;
};

}  // namespace coutil
