#include <cmath>

#include <benchmark/benchmark.h>

#include "core/geometry/path.h"

namespace coutil {
namespace {

// A side edge as a corset has it: two curved pieces, 300 mm high.
Path sideEdge() {
    return Path{{Cubic{{0, 0}, {-8, 40}, {-25, 75}, {-28, 110}},
                 Cubic{{-28, 110}, {-32, 160}, {-5, 240}, {12, 300}}}};
}

Path topEdge() { return Path{{Cubic{{-60, 250}, {-20, 262}, {30, 262}, {70, 285}}}}; }

void lengthOfPiece(benchmark::State& state) {
    Cubic c = sideEdge().pieces[1];
    for (auto _ : state) {
        benchmark::DoNotOptimize(c);
        benchmark::DoNotOptimize(lengthMm(c));
    }
}
BENCHMARK(lengthOfPiece);

void positionAtLengthOfEdge(benchmark::State& state) {
    const Path edge = sideEdge();
    double s = 0;
    for (auto _ : state) {
        s = std::fmod(s + 37.7, 300);
        benchmark::DoNotOptimize(positionAtLength(edge, s));
    }
}
BENCHMARK(positionAtLengthOfEdge);

void closestOnEdge(benchmark::State& state) {
    const Path edge = sideEdge();
    double y = 0;
    for (auto _ : state) {
        y = std::fmod(y + 37.7, 300);
        benchmark::DoNotOptimize(closestOn(edge, {40, y}));
    }
}
BENCHMARK(closestOnEdge);

void meetingOfEdges(benchmark::State& state) {
    const Path edge = sideEdge();
    const Path top = topEdge();
    for (auto _ : state) benchmark::DoNotOptimize(meetingsOf(edge, top));
}
BENCHMARK(meetingOfEdges);

void crossingOfEdgeAtWaist(benchmark::State& state) {
    const Path edge = sideEdge();
    for (auto _ : state) benchmark::DoNotOptimize(crossingsAtHeight(edge, 120));
}
BENCHMARK(crossingOfEdgeAtWaist);

void flattenEdgeForCutting(benchmark::State& state) {
    const Path edge = sideEdge();
    for (auto _ : state) benchmark::DoNotOptimize(flattened(edge, 0.005));
    state.counters["points"] = static_cast<double>(flattened(edge, 0.005).size());
}
BENCHMARK(flattenEdgeForCutting);

void fitThroughNinePoints(benchmark::State& state) {
    std::vector<Point> points;
    for (int i = 0; i < 9; ++i) points.emplace_back(20 * std::sin(i * 0.7), 35.0 * i);
    for (auto _ : state) {
        benchmark::DoNotOptimize(fittedThrough(points, {1, 0}, Vector::Zero()));
    }
}
BENCHMARK(fitThroughNinePoints);

void fitPolylineByCurves(benchmark::State& state) {
    const auto chain = flattened(sideEdge(), 0.005);
    for (auto _ : state) benchmark::DoNotOptimize(fittedTo(chain, 0.05, 0.3));
    state.counters["pieces"] = static_cast<double>(fittedTo(chain, 0.05, 0.3).pieces.size());
}
BENCHMARK(fitPolylineByCurves);

}  // namespace
}  // namespace coutil
