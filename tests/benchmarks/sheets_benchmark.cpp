#include <benchmark/benchmark.h>

#include "core/sheets/sheet_drawing.h"
#include "tests/core/sheets/made_up_tracings.h"

namespace coutil {
namespace {

void planSheetsOfCorset(benchmark::State& state) {
    const auto tracings = madeUpCorset();
    for (auto _ : state) benchmark::DoNotOptimize(planSheets(tracings, {}));
}
BENCHMARK(planSheetsOfCorset)->Unit(benchmark::kMillisecond);

void planSheetsOfDress(benchmark::State& state) {
    const auto tracings = madeUpDress();
    for (auto _ : state) benchmark::DoNotOptimize(planSheets(tracings, {}));
}
BENCHMARK(planSheetsOfDress)->Unit(benchmark::kMillisecond);

// Effort in hundredths: 100 is what the Print bench asks for.
void planFewerSheetsOfDress(benchmark::State& state) {
    const auto tracings = madeUpDress();
    const double effort = static_cast<double>(state.range(0)) / 100;
    std::size_t sheets = 0;
    for (auto _ : state) sheets = planFewerSheets(tracings, {}, 1, effort)->sheets.size();
    state.counters["sheets"] = static_cast<double>(sheets);
}
BENCHMARK(planFewerSheetsOfDress)->Arg(1)->Arg(100)->Iterations(1)->Unit(benchmark::kMillisecond);

void drawSheetsOfDress(benchmark::State& state) {
    const auto tracings = madeUpDress();
    const SheetPlan plan = *planSheets(tracings, {});
    const SheetWords words;
    for (auto _ : state) benchmark::DoNotOptimize(drawSheets(plan, tracings, words));
    state.counters["sheets"] = static_cast<double>(plan.sheets.size());
}
BENCHMARK(drawSheetsOfDress)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace coutil
