// The written PDF is read by a program that shares nothing with the one that wrote it
// (read_back.py): square and bars, page boxes, margins, every line put together again, words,
// fonts. Paper sizes: ISO 216 and ANSI/ASME Y14.1 (from memory); a point is 1/72 in (ISO 32000-1).
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "tests/core/sheets/made_up_tracings.h"
#include "tests/ui/printing/sheet_truth.h"
#include "ui/printing/pdf_file.h"

namespace coutil {
namespace {

struct Case {
    const char* name;
    const char* paper;
    double widthMm;
    double heightMm;
    double scaleX;
    double scaleY;
    Orientation orientation = Orientation::portrait;
    bool isDress = false;
};

void PrintTo(const Case& c, std::ostream* out) { *out << c.name; }

struct Reading {
    int exitCode = -1;
    std::string said;
};

// Writes a PDF of the plan and lets the reader compare it with `truthPlan` and `truthTracings`.
Reading readBack(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                 const SheetPlan& truthPlan, const std::vector<Tracing>& truthTracings) {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath("sheets.pdf");
    const QString truth = folder.filePath("truth.json");
    const QString title = QStringLiteral("Corset of the second act");
    const PdfInfo info{title, QDateTime(QDate(2026, 3, 14), QTime(0, 0), Qt::UTC)};
    EXPECT_TRUE(writeSheetsPdf(drawSheets(plan, tracings, testWords()), info, pdf));
    EXPECT_TRUE(writeTruth(truthPlan, truthTracings, title, truth));
    QProcess reader;
    reader.setProcessChannelMode(QProcess::MergedChannels);
    reader.start("python3", {COUTIL_SOURCE_DIR "/tests/ui/printing/read_back.py", pdf, truth});
    EXPECT_TRUE(reader.waitForFinished(120'000));
    EXPECT_EQ(reader.exitStatus(), QProcess::NormalExit);
    return {reader.exitCode(), reader.readAll().toStdString()};
}

class ReadBack : public testing::TestWithParam<Case> {};

TEST_P(ReadBack, sheetsPutTogetherAgainAreThePattern) {
    const Case& c = GetParam();
    SheetOptions options;
    options.paper = *paperNamed(c.paper);
    options.orientation = c.orientation;
    options.scaleX = c.scaleX;
    options.scaleY = c.scaleY;
    const auto tracings = c.isDress ? madeUpDress() : madeUpCorset();
    const auto plan = planSheets(tracings, options);
    ASSERT_TRUE(plan);
    if (!options.paper.isRoll) {
        const auto [w, h] =
            plan->isLandscape ? std::pair(c.heightMm, c.widthMm) : std::pair(c.widthMm, c.heightMm);
        EXPECT_EQ(plan->sheetWidthUm, std::llround(w * 1000));
        EXPECT_EQ(plan->sheetHeightUm, std::llround(h * 1000));
    }
    const Reading reading = readBack(*plan, tracings, *plan, tracings);
    std::cout << reading.said;
    EXPECT_EQ(reading.exitCode, 0) << reading.said;
}

// The reader itself: it must see a tenth of a millimetre, a factor left out, and a line missing.
TEST(Reader, seesWhatIsWrong) {
    const auto tracings = madeUpCorset(4);
    const auto plan = planSheets(tracings, {});
    ASSERT_EQ(readBack(*plan, tracings, *plan, tracings).exitCode, 0);

    SheetPlan moved = *plan;
    moved.placed[1].placement.shift.x() += 0.1;
    EXPECT_EQ(readBack(*plan, tracings, moved, tracings).exitCode, 1);

    SheetPlan corrected = *plan;
    corrected.options.scaleY = 1.002;
    EXPECT_EQ(readBack(*plan, tracings, corrected, tracings).exitCode, 1);

    auto holed = tracings;
    holed[2].sewing.pop_back();
    EXPECT_EQ(readBack(*plan, holed, *plan, tracings).exitCode, 1);
}

INSTANTIATE_TEST_SUITE_P(
    papers, ReadBack,
    testing::Values(
        Case{"A4", "A4", 210, 297, 1, 1}, Case{"Letter", "letter", 215.9, 279.4, 1, 1},
        Case{"A0", "A0", 841, 1189, 1, 1}, Case{"A4corrected", "A4", 210, 297, 1.0123, 0.9871},
        Case{"A4landscapeCorrected", "A4", 210, 297, 1.003, 0.994, Orientation::landscape},
        Case{"A0corrected", "A0", 841, 1189, 0.9952, 1.0031},
        Case{"Legal", "Legal", 215.9, 355.6, 1, 1}, Case{"roll", "Roll 914", 914, 0, 1, 1.002},
        Case{"onePage", "One page", 0, 0, 1, 1},
        Case{"onePageDress", "One page", 0, 0, 1.002, 0.998, Orientation::portrait, true},
        Case{"dressTabloid", "Tabloid", 279.4, 431.8, 1, 1, Orientation::whicheverFewer, true}),
    [](const auto& tested) { return std::string(tested.param.name); });

}  // namespace
}  // namespace coutil
