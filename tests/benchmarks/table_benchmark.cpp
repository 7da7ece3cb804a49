// Frame times of the table at 1600 x 1000 on the raster engine; the aim is under 8 ms a frame.
#include <QApplication>
#include <QImage>

#include <benchmark/benchmark.h>

#include "tests/ui/canvas/invented_scene.h"
#include "ui/canvas/table.h"

namespace {

constexpr int kPanels = 24;

// Everything painted anew: what a zoom, a pan or a redraft costs.
void fullRepaint(benchmark::State& state, double zoom, bool hasCuttingLines) {
    coutil::Table table;
    table.resize(1600, 1000);
    coutil::TableScene scene = coutil::inventedScene(kPanels);
    if (hasCuttingLines) {
        for (coutil::ScenePanel& panel : scene.panels) panel.cutting = panel.sewing;
    }
    table.setScene(scene);
    table.zoomBy(zoom);
    QImage image(1600, 1000, QImage::Format_RGB32);
    for (auto _ : state) {
        table.setView(table.view().pannedBy({1, 0}));
        table.render(&image);
        state.PauseTiming();
        table.setView(table.view().pannedBy({-1, 0}));
        state.ResumeTiming();
    }
}

void fittedFrame(benchmark::State& state) { fullRepaint(state, 1, false); }
void tracedFrame(benchmark::State& state) { fullRepaint(state, 1, true); }
void zoomedFrame(benchmark::State& state) { fullRepaint(state, 3, true); }

// Only what the pointer changes: the cached layer and the halos.
void hoverFrame(benchmark::State& state) {
    coutil::Table table;
    table.resize(1600, 1000);
    table.setScene(coutil::inventedScene(kPanels));
    QImage image(1600, 1000, QImage::Format_RGB32);
    table.render(&image);
    int panel = 0;
    for (auto _ : state) {
        table.pickPanel(panel = (panel + 1) % kPanels);
        table.render(&image);
    }
}

// A new scene, as every keystroke in a style makes one, and its frame.
void newSceneFrame(benchmark::State& state) {
    coutil::Table table;
    table.resize(1600, 1000);
    const coutil::TableScene scene = coutil::inventedScene(kPanels);
    QImage image(1600, 1000, QImage::Format_RGB32);
    for (auto _ : state) {
        table.setScene(scene);
        table.render(&image);
    }
}

BENCHMARK(fittedFrame)->Unit(benchmark::kMillisecond);
BENCHMARK(tracedFrame)->Unit(benchmark::kMillisecond);
BENCHMARK(zoomedFrame)->Unit(benchmark::kMillisecond);
BENCHMARK(hoverFrame)->Unit(benchmark::kMillisecond);
BENCHMARK(newSceneFrame)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
