#include <benchmark/benchmark.h>

#include "core/alterations/apply_alterations.h"
#include "core/block/draft_corset.h"
#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

// A 14-panel whole pattern with 20 alterations in three fittings; one of the last is dragged. Aim:
// well below 2 ms from the changed amount to the new pattern.
void oneAmountOfTwentyChanges(benchmark::State& state) {
    Style style;
    style.panelsPerHalf = 7;
    const auto base = draftCorset(samples::average(), style);
    std::vector<Alteration> alterations;
    for (std::size_t k = 0; k < 20; ++k) {
        const Seam& seam = base->seams[k % base->seams.size()];
        ShapeSeam shape;
        shape.seam = seam.name;
        shape.amounts = {{-60, 3}, {0, 6}, {static_cast<double>(40 + k), -4}};
        const BodySide side = k % 3 == 0   ? BodySide::left
                              : k % 3 == 1 ? BodySide::right
                                           : BodySide::both;
        alterations.push_back({.id = std::to_string(k), .side = side, .change = shape});
    }
    double amountMm = 6;
    for (auto _ : state) {
        amountMm = amountMm == 6 ? 6.5 : 6;
        std::get<ShapeSeam>(alterations.back().change).amounts[1].amountMm = amountMm;
        benchmark::DoNotOptimize(applyAlterations(*base, alterations));
    }
}
BENCHMARK(oneAmountOfTwentyChanges)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace coutil
