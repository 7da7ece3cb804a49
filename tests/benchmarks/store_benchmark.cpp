// How long folios and working copies take. Figures go into README with the machine named.
#include <cstdlib>
#include <filesystem>
#include <string>

#include <benchmark/benchmark.h>

#include "core/store/folio_file.h"
#include "core/store/working_copy.h"
#include "tests/core/store/sample_folio.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;
using namespace coutil::test;

// Eight years of a client: 16 measurement sets, 24 garments.
Folio longFolio() {
    Folio folio = sampleFolio();
    const MeasurementSet set = folio.measurementSets[0];
    const Garment garment = folio.garments[0];
    for (int i = 2; i < 16; ++i) {
        folio.measurementSets.push_back(set);
        folio.measurementSets.back().id.append("-").append(std::to_string(i));
    }
    for (int i = 2; i < 24; ++i) {
        folio.garments.push_back(garment);
        folio.garments.back().id.append("-").append(std::to_string(i));
    }
    return folio;
}

void openFolio(benchmark::State& state) {
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "a.coutil";
    if (writeFolio(state.range(0) != 0 ? longFolio() : sampleFolio(), file))
        state.SkipWithError("cannot write");
    for (auto _ : state) benchmark::DoNotOptimize(readFolio(file));
    state.counters["bytes"] = static_cast<double>(std::filesystem::file_size(file));
}
BENCHMARK(openFolio)->ArgName("long")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

void saveFolio(benchmark::State& state) {
    const ScratchFolder folder;
    const Folio folio = state.range(0) != 0 ? longFolio() : sampleFolio();
    for (auto _ : state)
        if (writeFolio(folio, folder / "a.coutil")) state.SkipWithError("cannot write");
}
BENCHMARK(saveFolio)->ArgName("long")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

void recordChange(benchmark::State& state) {
    const ScratchFolder folder;
    const auto copy = WorkingCopy::begin(folder.path(), sampleFolio(), "");
    int variant = 0;
    for (auto _ : state)
        if ((*copy)->record(sampleFolio(++variant), "2026-05-01T10:00:00Z"))
            state.SkipWithError("cannot record");
}
BENCHMARK(recordChange)->Unit(benchmark::kMillisecond);

}  // namespace
