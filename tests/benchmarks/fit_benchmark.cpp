// A mark dragged along its seam to the repainted table, 1600 x 1000 on the raster engine, on a
// whole pattern of 14 panels; the aim is under 8 ms.
#include <QImage>
#include <cmath>

#include <benchmark/benchmark.h>

#include "core/block/style.h"
#include "tests/ui/benches/invented_folio.h"
#include "ui/benches/fit_bench.h"
#include "ui/canvas/table.h"
#include "ui/document/fitting_change.h"
#include "ui/document/folio_document.h"

namespace {

using namespace coutil;

// Readings on every seam, one of them on the left alone.
Fitting fittingOf(const Pencil& pencil) {
    Fitting fitting{.id = "00000000-0000-4000-8000-000000000010", .heldOn = "2026-03-14"};
    fitting.pencil = pencil.id;
    int number = 0;
    for (const char* seam : {"1-2", "2-3", "3-4", "4-5", "5-6", "6-7"}) {
        Mark mark;
        mark.id = "mark " + std::to_string(++number);
        mark.kind = number % 2 == 0 ? MarkKind::opened : MarkKind::pinned;
        mark.place = SeamPlace{seam, 20};
        mark.amountMm = 5;
        mark.side = number == 3 ? BodySide::left : BodySide::both;
        fitting.marks.push_back(mark);
    }
    return fitting;
}

void draggedMarkFrame(benchmark::State& state) {
    FolioDocument document;
    Folio folio = inventedFolio();
    folio.garments[0].pencils[0].style.panelsPerHalf = 7;
    const Fitting fitting = fittingOf(folio.garments[0].pencils[0]);
    Fitting unread = fitting;
    unread.marks.clear();
    document.open(withFittingAdded(folio, 0, unread), {});
    document.take(
        withFittingChanged(document.folio(), 0, document.pencil()->id, nullptr, fitting).change,
        "marks");
    Table table;
    table.resize(1600, 1000);
    FitBench bench(document, table);
    bench.resize(400, 1000);
    bench.enter();
    if (table.scene().panels.size() != 14) state.SkipWithError("not 14 panels");
    QImage image(1600, 1000, QImage::Format_RGB32);
    Fitting moved = fitting;
    int step = 0;
    for (auto _ : state) {
        std::get<SeamPlace>(moved.marks[1].place).positionMm = 20 + (++step % 40);
        document.take(
            withFittingChanged(document.folio(), 0, document.pencil()->id, nullptr, moved).change,
            "drag", "drag");
        table.render(&image);
    }
    document.close();
}

BENCHMARK(draggedMarkFrame)->Unit(benchmark::kMillisecond);

}  // namespace
