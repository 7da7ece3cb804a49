// The timeline with 200 revisions: a key typed while it stands there, and building it anew.
#include <QApplication>

#include <benchmark/benchmark.h>

#include "core/revision/drift.h"
#include "tests/ui/timeline/grown_garment.h"
#include "tests/ui/window/singer.h"
#include "ui/document/folio_document.h"
#include "ui/timeline/history_actions.h"
#include "ui/timeline/timeline_drawing.h"
#include "ui/timeline/timeline_strip.h"

namespace coutil {
namespace {

constexpr int kRevisions = 200;

Folio longFolio() {
    Folio folio = withConfirmed(singersFolio(), {}, 0, "2026-01-01");
    for (int number = 2; number <= kRevisions; ++number) {
        const int parent = number % 10 == 0 ? number / 2 : number - 1;  // a branch now and then
        folio =
            withConfirmed(folio, digestOf(folio, parent), number % 2 == 0 ? 1 : -1, "2026-02-01");
    }
    return withPencil(folio, digestOf(folio, kRevisions), "pencil");
}

const Folio& folioOf200() {
    static const Folio folio = longFolio();
    return folio;
}

struct Strip {
    Strip() {
        document.open(folioOf200(), {});
        strip.resize(1280, strip.height());
        strip.show();
        QApplication::processEvents();
    }
    FolioDocument document;
    HistoryActions actions{document};
    TimelineStrip strip{document, actions};
};

void timelineOf200AfterAKey(benchmark::State& state) {
    Strip shown;
    for (auto _ : state) shown.strip.drawing().showDocument();
}
BENCHMARK(timelineOf200AfterAKey)->Unit(benchmark::kMillisecond);

void timelineOf200BuiltAnew(benchmark::State& state) {
    Strip shown;
    for (auto _ : state) {
        shown.strip.drawing().forget();
        shown.strip.drawing().showDocument();
    }
}
BENCHMARK(timelineOf200BuiltAnew)->Unit(benchmark::kMillisecond);

void timelineOf200Painted(benchmark::State& state) {
    Strip shown;
    for (auto _ : state) benchmark::DoNotOptimize(shown.strip.grab());
}
BENCHMARK(timelineOf200Painted)->Unit(benchmark::kMillisecond);

// What `check` does: every revision drafted again, from ink to ink.
void driftOf200(benchmark::State& state) {
    const Folio& folio = folioOf200();
    for (auto _ : state) benchmark::DoNotOptimize(driftIn(folio, folio.garments[0]));
}
BENCHMARK(driftOf200)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace coutil
