// Allowances of a whole pattern, and the chain from measurements to tracings.
#include <benchmark/benchmark.h>

#include "core/geometry/offset_outline.h"
#include "core/revision/draft_garment.h"

namespace coutil {
namespace {

MeasurementSet singer() {
    using enum Measurement;
    MeasurementSet set;
    set.valuesMm = {{bustGirth, 960},   {underBustGirth, 800}, {waistGirth, 740},
                    {topHipGirth, 900}, {hipGirth, 1000},      {waistToUnderBust, 80},
                    {waistToBust, 150}, {waistToArmpit, 200},  {waistToHighHip, 100},
                    {waistToHip, 200},  {waistToLap, 150}};
    return set;
}

Style twelvePanels(bool isBound) {
    Style style;
    style.panelsPerHalf = 6;
    style.allowance.isTopBound = isBound;
    style.allowance.isBottomBound = isBound;
    return style;
}

// Aim: below 2 ms. Twelve panels are six tracings, cut as pairs; everything of a tracing included.
void tracingsOfTwelvePanels(benchmark::State& state) {
    const Style style = twelvePanels(state.range(0) != 0);
    const auto garment = draftGarment(singer(), style);
    for (auto _ : state) {
        benchmark::DoNotOptimize(traceTracings(*garment.pattern, style.allowance));
    }
}
BENCHMARK(tracingsOfTwelvePanels)->ArgName("bound")->Arg(1)->Arg(0)->Unit(benchmark::kMillisecond);

// The cutting lines alone, verified.
void cuttingLinesOfTwelvePanels(benchmark::State& state) {
    const auto garment = draftGarment(singer(), twelvePanels(true));
    std::vector<std::vector<OffsetEdge>> outlines;
    for (const Tracing& tracing : *garment.tracings) {
        auto& edges = outlines.emplace_back();
        for (std::size_t k = 0; k < tracing.sewing.size(); ++k) {
            edges.push_back({tracing.sewing[k].path, tracing.allowancesMm[k]});
        }
    }
    for (auto _ : state) {
        for (const auto& edges : outlines) benchmark::DoNotOptimize(offsetOutline(edges, {}));
    }
}
BENCHMARK(cuttingLinesOfTwelvePanels)->Unit(benchmark::kMillisecond);

// Aim: below 5 ms from measurements to tracings.
void chainFromMeasurementsToTracings(benchmark::State& state) {
    const MeasurementSet set = singer();
    const Style style = twelvePanels(true);
    for (auto _ : state) benchmark::DoNotOptimize(draftGarment(set, style));
}
BENCHMARK(chainFromMeasurementsToTracings)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace coutil
