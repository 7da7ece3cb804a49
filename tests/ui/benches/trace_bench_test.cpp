#include "ui/benches/trace_bench.h"

#include <QCheckBox>
#include <QTest>
#include <cmath>

#include <gtest/gtest.h>

#include "core/tracing/tracing.h"
#include "tests/ui/benches/invented_folio.h"
#include "ui/benches/cut_list.h"
#include "ui/canvas/label_places.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/fields/slider_length_field.h"

namespace coutil {
namespace {

class TraceBenchTest : public testing::Test {
  protected:
    TraceBenchTest() : bench(document, table) {
        document.open(inventedFolio(), {});
        table.resize(900, 700);
        bench.resize(380, 900);
        table.show();
        bench.show();
        bench.enter();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&bench));
    }
    const std::vector<Tracing>& tracings() { return *document.drafted().tracings; }
    LengthField* fieldNamed(const QString& name) {
        QCoreApplication::processEvents();  // layouts show what was added to them
        for (auto* field : bench.findChildren<LengthField*>()) {
            if (field->accessibleName() == name && field->isVisibleTo(&bench)) return field;
        }
        return nullptr;
    }
    void retype(QLineEdit* field, const QString& text) {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
    }

    FolioDocument document;
    Table table;
    TraceBench bench;
};

TEST_F(TraceBenchTest, showsEveryTracingWithItsCuttingLine) {
    ASSERT_TRUE(document.drafted().tracings);
    ASSERT_EQ(table.scene().panels.size(), tracings().size());
    for (const ScenePanel& panel : table.scene().panels) {
        const QRectF sewing = panel.sewing.boundingRect();
        const QRectF cutting = panel.cutting.boundingRect();
        EXPECT_TRUE(cutting.adjusted(-0.1, -0.1, 0.1, 0.1).contains(sewing));
        EXPECT_GT(cutting.width(), sewing.width() + 9);  // 10 mm a seam less what leans
        EXPECT_FALSE(panel.notches.empty());
        EXPECT_FALSE(panel.label.isEmpty());
    }
}

// How many to cut stands on every piece of every corset, on a laptop's table too, and on no line.
TEST_F(TraceBenchTest, everyPieceTellsHowManyToCut) {
    for (int panels = 4; panels <= 7; ++panels) {
        Style style = document.garment()->pencils.back().style;
        style.panelsPerHalf = panels;
        document.changeStyle(style, "panels");
        for (const QSize& size : {QSize(700, 600), QSize(868, 732), QSize(1500, 1000)}) {
            table.resize(size);
            table.fit();
            const TableScene& scene = table.scene();
            const FlatScene flat = flattenedScene(scene);
            const TableLook look{scene,        flat,        table.view(), tableColours(false),
                                 table.rect(), table.font()};
            const std::vector<LabelPlace> places = labelPlaces(look);
            ASSERT_EQ(places.size(), tracings().size());
            for (std::size_t i = 0; i < places.size(); ++i) {
                const QRectF& box = places[i].box;
                EXPECT_GE(places[i].sizePx, 9) << panels << " " << size.width() << " " << i;
                EXPECT_FALSE(isCrossed(scene, flat, table.view(), box)) << panels << " " << i;
                EXPECT_TRUE(QRectF(table.rect()).contains(box)) << panels << " " << i;
                for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(box.intersects(places[j].box));
                for (const QLineF& level : scene.panels[i].levels) {
                    const QRectF line =
                        QRectF(table.view().toPx(level.p1()), table.view().toPx(level.p2()));
                    EXPECT_FALSE(box.intersects(line.normalized().adjusted(0, -0.5, 0, 0.5)));
                }
            }
        }
    }
}

TEST_F(TraceBenchTest, tracingsDoNotTouchEachOther) {
    const auto& panels = table.scene().panels;
    for (std::size_t i = 1; i < panels.size(); ++i) {
        EXPECT_GT(panels[i].cutting.boundingRect().left(),
                  panels[i - 1].cutting.boundingRect().right());
    }
}

TEST_F(TraceBenchTest, seamAllowanceIsTypedAndIsOneUndoStep) {
    auto* seam = bench.findChild<SliderLengthField*>("allowance_seam");
    ASSERT_NE(seam, nullptr);
    const double before = table.scene().panels[2].cutting.boundingRect().width();
    retype(&seam->field(), "1.5");
    EXPECT_DOUBLE_EQ(document.garment()->pencils.back().style.allowance.seamMm, 15);
    // 5 mm more on both sides, a little less where the seams lean.
    EXPECT_NEAR(table.scene().panels[2].cutting.boundingRect().width(), before + 10, 1);
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(TraceBenchTest, anUnboundEdgeGetsItsAllowance) {
    auto* top = bench.findChild<QCheckBox*>("topBound");
    const double before = table.scene().panels[4].cutting.boundingRect().bottom();
    QTest::keyClick(top, Qt::Key_Space);
    EXPECT_FALSE(document.garment()->pencils.back().style.allowance.isTopBound);
    EXPECT_NEAR(table.scene().panels[4].cutting.boundingRect().bottom(), before + 10, 1);
}

TEST_F(TraceBenchTest, onePickedEdgeTakesAnAllowanceOfItsOwn) {
    table.pickPanel(1);
    LengthField* field = fieldNamed("Allowance at seam 2-3 of panel 2");
    ASSERT_NE(field, nullptr);
    EXPECT_EQ(field->placeholderText(), "1");
    retype(field, "2");
    EXPECT_DOUBLE_EQ(document.garment()->pencils.back().style.allowance.byEdgeMm.at("2/seam 2-3"),
                     20);
    EXPECT_EQ(document.undoStack().count(), 1);
    field->selectAll();
    QTest::keyClick(field, Qt::Key_Backspace);
    EXPECT_TRUE(document.garment()->pencils.back().style.allowance.byEdgeMm.empty());
}

TEST_F(TraceBenchTest, tellsWhatToCut) {
    const QString text = bench.findChild<CutList*>()->text();
    EXPECT_EQ(text.count("cut 2, one mirrored"), 5);
    Style style = document.garment()->pencils.back().style;
    style.front = FrontClosure::fold;
    document.changeStyle(style, "front");
    EXPECT_TRUE(bench.findChild<CutList*>()->text().contains("cut 1 on the fold"));
}

TEST_F(TraceBenchTest, hoveringAnEdgeTellsItsAllowance) {
    const auto& edge = table.scene().panels[2].edges[1];
    QTest::mouseMove(&table, table.view().toPx(edge.path.pointAtPercent(0.4)).toPoint());
    EXPECT_TRUE(table.plate().contains("allowance")) << table.plate().toStdString();
}

}  // namespace
}  // namespace coutil
