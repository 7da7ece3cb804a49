// Garments and measurement sets of one client.
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/measurement_row.h"
#include "ui/fields/choice_field.h"
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

}  // namespace
}  // namespace coutil
