#include <benchmark/benchmark.h>

#include "core/block/draft_corset.h"
#include "core/comparison/comparison.h"
#include "core/comparison/exaggerated_outline.h"
#include "core/comparison/girth_chart.h"
#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

// A garment of 14 panels: seven on the left, and seven on the right with another waist.
Pattern fourteenPanels(double waistEaseMm) {
    Style style;
    style.panelsPerHalf = 7;
    Pattern whole = *draftCorset(samples::average(), style);
    for (Panel& panel : whole.panels) panel.side = PanelSide::left;
    style.easeMm[LevelId::waist] = waistEaseMm;
    const Pattern right = *draftCorset(samples::average(), style);
    for (Panel panel : right.panels) {
        panel.side = PanelSide::right;
        whole.panels.push_back(std::move(panel));
    }
    for (Seam seam : right.seams) {
        seam.front.panel += right.panels.size();
        seam.back.panel += right.panels.size();
        whole.seams.push_back(std::move(seam));
    }
    return whole;
}

// Every edge of the second differs: the dearest case. Aim: below 5 ms.
void compareFourteenPanels(benchmark::State& state) {
    const Pattern a = fourteenPanels(-60);
    Style style;
    style.panelsPerHalf = 7;
    style.easeMm = {{LevelId::bust, 10}, {LevelId::underBust, -30}, {LevelId::waist, -75}};
    const Pattern b = *draftCorset(samples::average(), style);
    for (auto _ : state) benchmark::DoNotOptimize(comparePatterns(a, b));
}
BENCHMARK(compareFourteenPanels)->Unit(benchmark::kMicrosecond);

// One seam's side of the garment differs, as after a fitting.
void compareFittedFourteenPanels(benchmark::State& state) {
    const Pattern a = fourteenPanels(-60);
    const Pattern b = fourteenPanels(-75);
    for (auto _ : state) benchmark::DoNotOptimize(comparePatterns(a, b));
}
BENCHMARK(compareFittedFourteenPanels)->Unit(benchmark::kMicrosecond);

void chartOfFourteenPanels(benchmark::State& state) {
    const Pattern a = fourteenPanels(-60);
    const Pattern b = fourteenPanels(-75);
    for (auto _ : state) benchmark::DoNotOptimize(girthChart(a, b));
}
BENCHMARK(chartOfFourteenPanels)->Unit(benchmark::kMicrosecond);

void exaggerateFourteenPanels(benchmark::State& state) {
    const Pattern a = fourteenPanels(-60);
    const Pattern b = fourteenPanels(-75);
    const Comparison comparison = comparePatterns(a, b);
    for (auto _ : state)
        for (const PanelComparison& pair : comparison.panels)
            benchmark::DoNotOptimize(exaggeratedOutline(a, b, pair, 10));
}
BENCHMARK(exaggerateFourteenPanels)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace coutil
