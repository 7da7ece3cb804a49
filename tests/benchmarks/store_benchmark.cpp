// How long folios and working copies take. Figures go into README with the machine named.
#include <cstdlib>
#include <filesystem>
#include <string>

#include <benchmark/benchmark.h>

#include "core/revision/confirm.h"
#include "core/revision/draft_garment.h"
#include "core/revision/ink.h"
#include "core/store/folio_file.h"
#include "core/store/text_formats.h"
#include "core/store/working_copy.h"
#include "tests/bodies/ansur_bodies.h"
#include "tests/core/store/sample_folio.h"
#include "tests/core/store/scratch_folder.h"

namespace {

using namespace coutil;
using namespace coutil::test;

// Eight years of a client: 16 measurement sets, 24 garments.
Folio longFolio() {
    Folio folio = sampleBlocks();
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

// A garment that was confirmed 200 times: a corset of ten panels a half would be too many, so the
// drafted six are taken as left and right; twenty alterations in every recipe.
Folio longHistory() {
    Folio folio = sampleBlocks();
    Garment& garment = folio.garments[0];
    const auto drafted = draftGarment(bodies::ansurBodies().at(17), Style{});
    Pattern pattern = drafted.pattern.value();
    pattern.panels.insert(pattern.panels.end(), drafted.pattern->panels.begin(),
                          drafted.pattern->panels.end());
    std::vector<Alteration> alterations = sampleFolio().garments[0].pencils[1].alterations;
    while (alterations.size() < 20) alterations.push_back(alterations[alterations.size() % 7]);
    std::string parent;
    for (int number = 1; number <= 200; ++number) {
        alterations.back().why = "fitting " + std::to_string(number);
        RevisionContent content{.garment = garment.id,
                                .number = number,
                                .confirmedOn = "2026-04-11",
                                .confirmedBy = "wardrobe",
                                .note = "let out",
                                .parent = parent,
                                .recipe = {folio.measurementSets[0], Style{}, alterations},
                                .pattern = pattern,
                                .errorsAccepted = {}};
        std::string recipe = writeRecipeJson(content.recipe);
        garment.revisions.emplace_back(inkOver(std::move(content), std::move(recipe)));
        parent = garment.revisions.back()->digest();
    }
    return folio;
}

void openHistory(benchmark::State& state) {
    const ScratchFolder folder;
    const Folio folio = longHistory();
    if (writeFolio(folio, folder / "a.coutil")) state.SkipWithError("cannot write");
    for (auto _ : state) benchmark::DoNotOptimize(readFolio(folder / "a.coutil"));
    state.counters["bytes"] = static_cast<double>(std::filesystem::file_size(folder / "a.coutil"));
    state.counters["panels"] =
        static_cast<double>(folio.garments[0].revisions[0]->pattern().panels.size());
}
BENCHMARK(openHistory)->Unit(benchmark::kMillisecond);

void readInk(benchmark::State& state) {
    const Folio folio = longHistory();
    for (auto _ : state)
        for (const auto& revision : folio.garments[0].revisions)
            benchmark::DoNotOptimize(patternFromInkText(revision->inkText()));
}
BENCHMARK(readInk)->Unit(benchmark::kMillisecond);

// The two hundred and first.
void confirmPencil(benchmark::State& state) {
    Folio folio = longHistory();
    const Garment& garment = folio.garments[0];
    const DraftedPencil drafted{garment.revisions.back()->pattern(), {}};
    for (auto _ : state)
        benchmark::DoNotOptimize(pencilConfirmed(folio, 0, garment.pencils[0].id, drafted,
                                                 {"2026-05-01", "wardrobe", "let out"},
                                                 writeRecipeJson));
}
BENCHMARK(confirmPencil)->Unit(benchmark::kMillisecond);

}  // namespace
