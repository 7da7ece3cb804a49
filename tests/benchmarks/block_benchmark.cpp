#include <benchmark/benchmark.h>

#include "core/block/draft_corset.h"
#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

// Aim: below 1 ms for six panels a half.
void draftHalf(benchmark::State& state) {
    const Body body = samples::average();
    Style style;
    style.panelsPerHalf = static_cast<int>(state.range(0));
    for (auto _ : state) benchmark::DoNotOptimize(draftCorset(body, style));
}
BENCHMARK(draftHalf)->Arg(4)->Arg(5)->Arg(6)->Arg(7)->Unit(benchmark::kMicrosecond);

void checkPatternOfSixPanels(benchmark::State& state) {
    Style style;
    style.panelsPerHalf = 6;
    const auto pattern = draftCorset(samples::average(), style);
    for (auto _ : state) benchmark::DoNotOptimize(checkPattern(*pattern));
}
BENCHMARK(checkPatternOfSixPanels)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace coutil
