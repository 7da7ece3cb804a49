#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <cmath>
#include <stdexcept>
#include <utility>

#include <gtest/gtest.h>

#include "core/alterations/find_places.h"
#include "core/alterations/whole_pattern.h"
#include "core/revision/confirm.h"
#include "core/store/text_formats.h"
#include "tests/ui/benches/invented_folio.h"
#include "ui/benches/fit_bench.h"
#include "ui/benches/fit_line_fades.h"
#include "ui/benches/fit_mark_list.h"
#include "ui/benches/fit_photo_view.h"
#include "ui/benches/fit_places.h"
#include "ui/benches/pattern_scene.h"
#include "ui/canvas/painter_path.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/length_field.h"

namespace coutil {

// The Fit bench with its table, shown, over an invented folio.
class FitBenchTest : public testing::Test {
  protected:
    FitBenchTest() : bench(document, table) {
        document.open(inventedFolio(), {});
        table.resize(1000, 700);
        bench.resize(400, 1200);
        table.show();
        bench.show();
        bench.enter();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&bench));
    }

    template <class Widget>
    Widget* find(const char* name) {
        auto* widget = bench.findChild<Widget*>(QLatin1String(name));
        if (widget == nullptr) throw std::runtime_error(std::string("no widget ") + name);
        return widget;
    }
    void recordFitting() { find<QPushButton>("recordFitting")->click(); }
    const Fitting& fitting() { return document.garment()->fittings.front(); }
    const Pencil& pencil() { return *document.pencil(); }
    const Pattern& pattern() { return *document.drafted().pattern; }

    // Where a seam position lies on the table, on the edge of the panel in front.
    QPoint onSeam(const std::string& seam, double positionMm) {
        const auto seams = seamsNamed(pattern(), seam, BodySide::both);
        const EdgeRef& ref = pattern().seams.at(seams.front()).front;
        const Point at = *pointAtSeamPosition(edgeAt(pattern(), ref), positionMm);
        const auto placements = masterPlacements(pattern(), kSpaceBetweenPanelsMm);
        return table.view().toPx(painterPoint(placed(at, placements[ref.panel]))).toPoint();
    }
    void click(const QPoint& px) {
        QTest::mouseMove(&table, px);
        QTest::mouseClick(&table, Qt::LeftButton, Qt::NoModifier, px);
    }
    void typeAmount(const QString& text) {
        QTest::keyClicks(find<LengthField>("markAmount"), text);
    }
    const SceneHandle& handle(const QString& id) {
        for (const SceneHandle& each : table.scene().handles)
            if (each.id == id) return each;
        throw std::runtime_error("no handle " + id.toStdString());
    }
    void drag(const QString& id, const QPointF& byMm, bool isReleased) {
        const QPointF from = handle(id).atMm;
        const QPoint start = table.view().toPx(from).toPoint();
        const QPoint end = table.view().toPx(from + byMm).toPoint();
        QTest::mousePress(&table, Qt::LeftButton, Qt::NoModifier, start);
        QTest::mouseMove(&table, (start + end) / 2);
        QTest::mouseMove(&table, end);
        if (isReleased) QTest::mouseRelease(&table, Qt::LeftButton, Qt::NoModifier, end);
    }

    // The pencil on the table gone over in ink: the folio after, and the revision's digest.
    std::pair<Folio, std::string> confirmPencil() {
        const auto after =
            pencilConfirmed(document.folio(), 0, pencil().id, {document.drafted().pattern, {}},
                            {.on = "2026-03-18", .by = "Wardrobe", .note = "block"},
                            [](const Recipe& recipe) { return writeRecipeJson(recipe); });
        if (!after) throw std::runtime_error("not confirmed");
        return {*after, after->garments[0].revisions.back()->digest()};
    }

    FolioDocument document;
    Table table;
    FitBench bench;
};

}  // namespace coutil
