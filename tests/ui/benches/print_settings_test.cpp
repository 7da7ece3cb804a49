#include "ui/benches/print_settings.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace coutil {
namespace {

class PrintSettingsTest : public testing::Test {
  protected:
    PrintSettingsTest() : settings(folder.filePath("s.ini"), QSettings::IniFormat) {}
    QTemporaryDir folder;
    QSettings settings;
};

TEST_F(PrintSettingsTest, comeBackAsTheyWere) {
    SheetOptions options;
    options.paper = *paperNamed("Letter");
    options.orientation = Orientation::landscape;
    options.marginUm = 12700;
    options.overlapUm = 15000;
    options.scaleX = 1.005;
    options.scaleY = 0.998;
    options.mirroredToo = true;
    storeSheetOptions(settings, options);
    EXPECT_EQ(storedSheetOptions(settings), options);
}

TEST_F(PrintSettingsTest, eachPaperKeepsItsOwnCorrection) {
    SheetOptions options;
    options.scaleX = 1.004;
    storeSheetOptions(settings, options);
    options.paper = *paperNamed("A3");
    options.scaleX = 1;
    storeSheetOptions(settings, options);
    EXPECT_DOUBLE_EQ(storedCorrection(settings, *paperNamed("A4")).x, 1.004);
    EXPECT_DOUBLE_EQ(storedCorrection(settings, *paperNamed("A3")).x, 1);
}

TEST_F(PrintSettingsTest, whatIsNoSoundOptionIsNotTaken) {
    settings.setValue("print/paper", "nonsense");
    settings.setValue("print/marginUm", -5);
    settings.setValue("print/orientation", 99);
    EXPECT_EQ(storedSheetOptions(settings), SheetOptions{});
}

// A printer that makes 100 mm into `measured` wants 100 / measured (core/sheets/sheet_plan.h), on
// top of what it was printed with.
TEST(CorrectedFactor, buildsOnTheFactorInForce) {
    EXPECT_DOUBLE_EQ(correctedFactor(1, 99.5), 100 / 99.5);
    EXPECT_DOUBLE_EQ(correctedFactor(1.01, 100.5), 1.01 * 100 / 100.5);
    EXPECT_DOUBLE_EQ(correctedFactor(1.003, 100), 1.003);
}

}  // namespace
}  // namespace coutil
