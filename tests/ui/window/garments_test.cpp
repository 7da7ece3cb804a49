// Garments and measurement sets of one client.
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/measurement_row.h"
#include "ui/fields/choice_field.h"
#include "ui/window/bench_button.h"
#include "ui/window/folio_files.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

using enum Measurement;

class GarmentsTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->files().openDemo();
        window_->enterBench(0);
    }

    template <class W>
    W* named(const QString& accessibleName) {
        for (W* widget : window_->findChildren<W*>()) {
            if (widget->accessibleName() == accessibleName) return widget;
        }
        return nullptr;
    }
};

TEST_F(GarmentsTest, aNewGarmentIsNamedInPlace) {
    window_->menus().newGarment->trigger();
    auto* name = named<QLineEdit>("Name of the garment");
    ASSERT_NE(name, nullptr);
    ASSERT_TRUE(name->isVisible());
    EXPECT_TRUE(name->hasFocus());
    QTest::keyClicks(name, "Bodice of the miller's wife");
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_FALSE(name->isVisible());
    EXPECT_EQ(window_->document().garment()->name, "Bodice of the miller's wife");
    EXPECT_EQ(window_->document().folio().garments.size(), 2U);
}

TEST_F(GarmentsTest, renamingMayBeGivenUp) {
    const std::string before = window_->document().garment()->name;
    window_->menus().renameGarment->trigger();
    auto* name = named<QLineEdit>("Name of the garment");
    QTest::keyClicks(name, "Something else");
    QTest::keyClick(name, Qt::Key_Escape);
    EXPECT_FALSE(name->isVisible());
    EXPECT_EQ(window_->document().garment()->name, before);
    EXPECT_FALSE(window_->document().isModified());
}

TEST_F(GarmentsTest, anotherSetIsACopyAndTheOldOneCanBeChosenAgain) {
    type(waistGirth, "75");
    auto* newSet = named<QPushButton>("New measurement set");
    ASSERT_NE(newSet, nullptr);
    newSet->click();
    EXPECT_EQ(window_->document().folio().measurementSets.size(), 2U);
    EXPECT_EQ(row(waistGirth).field().text(), "75");
    type(waistGirth, "78");
    auto* sets = named<ChoiceField>("Measurement set the garment is drafted from");
    ASSERT_NE(sets, nullptr);
    ASSERT_EQ(sets->count(), 2);
    sets->setCurrentIndex(0);
    EXPECT_EQ(row(waistGirth).field().text(), "75");
    window_->document().undoStack().undo();
    EXPECT_EQ(row(waistGirth).field().text(), "78");
}

TEST_F(GarmentsTest, theClientsNameGoesToTitleAndTopLine) {
    QLineEdit* client = nullptr;
    for (auto* edit : window_->findChildren<QLineEdit*>()) {
        if (edit->text() == "Leonore, soprano") client = edit;
    }
    ASSERT_NE(client, nullptr);
    client->setFocus();
    client->selectAll();
    QTest::keyClicks(client, "Fidelia");
    EXPECT_EQ(window_->document().folio().client, "Fidelia");
    EXPECT_TRUE(window_->windowTitle().startsWith("Fidelia"));
    EXPECT_EQ(window_->document().undoStack().count(), 1) << "one name, one step";
}

TEST_F(GarmentsTest, theBenchesKeepTheirPlaceWhateverTheNamesAre) {
    const auto places = [this] {
        QApplication::processEvents();
        QList<QPoint> at;
        for (const auto* button : window_->findChildren<BenchButton*>()) {
            at << button->mapTo(window_.get(), QPoint());
        }
        return at;
    };
    for (const QSize& size : {QSize(1000, 700), QSize(1280, 800), QSize(1920, 1080)}) {
        window_->resize(size);
        Folio folio = window_->document().folio();
        folio.client = "Io";
        folio.garments.front().name = "A";
        window_->document().change(folio, "short");
        const QList<QPoint> before = places();
        ASSERT_EQ(before.size(), window_->benches().size());
        const std::string longName = "Leonore of the second chorus, understudy of the duchess";
        folio.client = longName;
        window_->document().change(folio, "long");
        EXPECT_EQ(places(), before);
        folio.garments.front().name = "Travelling bodice of the third act, with a basque";
        window_->document().change(folio, "long");
        EXPECT_EQ(places(), before);
        bool isShownWhole = false;
        for (const auto* label : window_->findChildren<QLabel*>()) {
            if (label->toolTip().toStdString() != longName) continue;
            isShownWhole = true;
            EXPECT_TRUE(label->text().endsWith(QChar(0x2026))) << label->text().toStdString();
            EXPECT_LE(label->fontMetrics().horizontalAdvance(label->text()), label->width());
        }
        EXPECT_TRUE(isShownWhole) << "in a tooltip";
    }
}

}  // namespace
}  // namespace coutil
