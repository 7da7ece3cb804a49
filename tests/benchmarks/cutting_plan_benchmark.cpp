// Cutting plans: a garment's bones, a chorus's, and a published task.
#include <random>
#include <vector>

#include <benchmark/benchmark.h>

#include "core/making_up/cutting_plan.h"

namespace coutil {
namespace {

std::vector<PieceToCut> bones(int lengths, unsigned mostPairs) {
    std::mt19937 random(5);
    std::vector<PieceToCut> pieces;
    for (int i = 0; i < lengths; ++i) {
        pieces.push_back({150 + 10 * static_cast<double>(random() % 31),
                          2 + 2 * static_cast<int>(random() % mostPairs)});
    }
    return pieces;
}

// Aim: a small part of the 5 ms that the making-up of a garment may take.
void cuttingPlanOfAGarment(benchmark::State& state) {
    const auto pieces = bones(10, 3);
    const std::vector<double> stocksMm =
        state.range(0) == 1 ? std::vector<double>{1000} : std::vector<double>{700, 1000, 1500};
    for (auto _ : state) benchmark::DoNotOptimize(cuttingPlan(pieces, stocksMm, 2));
}
BENCHMARK(cuttingPlanOfAGarment)->ArgName("stocks")->Arg(1)->Arg(3)->Unit(benchmark::kMillisecond);

void cuttingPlanOfAChorus(benchmark::State& state) {
    const auto pieces = bones(25, 6);
    for (auto _ : state) benchmark::DoNotOptimize(cuttingPlan(pieces, {1000}, 2));
}
BENCHMARK(cuttingPlanOfAChorus)->Unit(benchmark::kMillisecond);

void cuttingPlanOf73PaperRolls(benchmark::State& state) {
    const std::vector<PieceToCut> orders{{1380, 22}, {1520, 25}, {1560, 12}, {1710, 14}, {1820, 18},
                                         {1880, 18}, {1930, 20}, {2000, 10}, {2050, 12}, {2100, 14},
                                         {2140, 16}, {2150, 18}, {2200, 20}};
    for (auto _ : state) benchmark::DoNotOptimize(cuttingPlan(orders, {5600}, 0));
}
BENCHMARK(cuttingPlanOf73PaperRolls)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace coutil
