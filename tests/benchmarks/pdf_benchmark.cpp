#include <QGuiApplication>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include "tests/core/sheets/made_up_tracings.h"
#include "tests/ui/printing/sheet_truth.h"
#include "ui/printing/pdf_file.h"

namespace coutil {
namespace {

// Fonts want an application; no screen does.
void needApplication() {
    static int count = 1;
    static char name[] = "coutil_benchmarks";
    static char* arguments[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static const QGuiApplication application(count, arguments);
}

// The first page and 40 sheets of a dress, from drawings to the file on disk.
void writePdfOf40Sheets(benchmark::State& state) {
    needApplication();
    const auto tracings = madeUpDress();
    auto drawings = drawSheets(*planSheets(tracings, {}), tracings, testWords());
    drawings.resize(41);
    const QTemporaryDir folder;
    const QString path = folder.filePath("sheets.pdf");
    const PdfInfo info{QStringLiteral("Dress"), QDateTime(QDate(2026, 3, 14), QTime(), Qt::UTC)};
    for (auto _ : state) benchmark::DoNotOptimize(writeSheetsPdf(drawings, info, path));
}
BENCHMARK(writePdfOf40Sheets)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace coutil
