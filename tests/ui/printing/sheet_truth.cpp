#include "tests/ui/printing/sheet_truth.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace coutil {
namespace {

QJsonArray chainOf(const Path& path, const Placement& placement) {
    QJsonArray chain;
    for (const Point& p : flattened(placed(path, placement), 0.001)) {
        chain.append(QJsonArray{p.x(), p.y()});
    }
    return chain;
}

QJsonArray neighboursOf(const SheetPlan& plan, const Sheet& sheet) {
    QJsonArray names;
    for (const Sheet& other : plan.sheets) {
        const int apart = std::abs(other.row - sheet.row) + std::abs(other.column - sheet.column);
        if (apart == 1) names.append(QString::fromStdString(nameOf(other)));
    }
    return names;
}

}  // namespace

bool writeTruth(const SheetPlan& plan, const std::vector<Tracing>& tracings, const QString& title,
                const QString& path) {
    QJsonArray sheets;
    for (int page = 0; page < pagesOf(plan); ++page) {
        const auto index = sheetOnPage(plan, page);
        if (!index) continue;
        const Sheet& sheet = plan.sheets[*index];
        // From the steps alone, as the header promises: columns from the left, rows from the top.
        const auto x = static_cast<double>(sheet.column * plan.stepXUm) / 1000;
        const auto y = static_cast<double>((plan.rows - 1 - sheet.row) * plan.stepYUm) / 1000;
        sheets.append(QJsonObject{{"name", QString::fromStdString(nameOf(sheet))},
                                  {"x", x},
                                  {"y", y},
                                  {"neighbours", neighboursOf(plan, sheet)}});
    }
    QJsonArray cutting;
    QJsonArray sewing;
    for (const PlacedTracing& piece : plan.placed) {
        const Tracing& tracing = tracings[piece.tracing];
        cutting.append(chainOf(tracing.cutting, piece.placement));
        for (const Edge& edge : tracing.sewing) {
            sewing.append(chainOf(edge.path, piece.placement));
        }
    }
    const SheetOptions& options = plan.options;
    const double fx = plan.isLandscape ? options.scaleY : options.scaleX;
    const double fy = plan.isLandscape ? options.scaleX : options.scaleY;
    const QJsonObject truth{{"title", title},
                            {"widthMm", static_cast<double>(plan.sheetWidthUm) / 1000},
                            {"heightMm", static_cast<double>(plan.sheetHeightUm) / 1000},
                            {"marginMm", static_cast<double>(options.marginUm) / 1000},
                            {"frameMm", QJsonArray{static_cast<double>(plan.frameXUm) / 1000,
                                                   static_cast<double>(plan.frameYUm) / 1000}},
                            {"factors", QJsonArray{fx, fy}},
                            {"firstPageApart", !plan.firstBlock},
                            {"isOnePage", plan.options.paper.isOnePage},
                            {"sheets", sheets},
                            {"cutting", cutting},
                            {"sewing", sewing}};
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return false;
    return file.write(QJsonDocument(truth).toJson(QJsonDocument::Compact)) > 0;
}

SheetWords testWords() {
    SheetWords words;
    words.title = {"Corset of the second act", "Rosalinde Amsel", "pencil", "2026-03-14", true};
    words.firstSheet = "Measure first";
    words.scaleNote = "Print at 100 %";
    words.pageOf = "page %1 of %2";
    words.sheetLabel = "Sheet %1";
    words.mapHeading = "Sheet map, %1 sheets";
    words.measureFirst = "Measure the square in both directions.";
    words.correctionHint = "Type in 100 divided by what you measured.";
    words.joinHint = "Lay each sheet on the dashed line of the one before.";
    words.square = "100 mm";
    words.bar = "4 in";
    words.pencil = "pencil";
    words.revision = "revision %1";
    words.cutCount = "cut %1";
    words.mirroredPair = "one mirrored";
    words.mirroredTwin = "mirrored";
    words.onFold = "on the fold";
    words.panel = "panel %1";
    words.estimates = "Estimated: high hip 90 cm";
    words.cautions = {"Sew a mock-up first."};
    words.levels = {{"waist", "waist"}, {"bust", "bust"}};
    return words;
}

}  // namespace coutil
