// Sheets on a printer: the same path as to paper, into a file, read by the tools of poppler. Paper
// sizes: ISO 216 and ANSI/ASME Y14.1 (from memory); a point is 1/72 in (ISO 32000-1).
#include "ui/printing/print_sheets.h"

#include <QColor>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <cmath>

#include <gtest/gtest.h>

#include "tests/core/sheets/made_up_tracings.h"
#include "tests/ui/printing/sheet_truth.h"

namespace coutil {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;

std::vector<SheetDrawing> sheetsOn(const char* paper, Orientation orientation) {
    SheetOptions options;
    options.paper = *paperNamed(paper);
    options.orientation = orientation;
    const auto tracings = madeUpCorset(4);
    return drawSheets(*planSheets(tracings, options), tracings, testWords());
}

QByteArray saidBy(const QString& tool, const QStringList& words) {
    QProcess process;
    process.start(tool, words);
    EXPECT_TRUE(process.waitForFinished(60'000)) << tool.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << tool.toStdString();
    return process.readAllStandardOutput();
}

// Media boxes of all pages, mm.
QList<QSizeF> pageSizesOf(const QString& pdf) {
    const QByteArray said = saidBy("pdfinfo", {"-box", "-f", "1", "-l", "9999", pdf});
    static const QRegularExpression box(
        QStringLiteral("Page +\\d+ MediaBox: +0\\.00 +0\\.00 +([0-9.]+) +([0-9.]+)"));
    QList<QSizeF> sizes;
    for (auto all = box.globalMatch(QString::fromLatin1(said)); all.hasNext();) {
        const auto match = all.next();
        sizes << QSizeF(match.captured(1).toDouble(), match.captured(2).toDouble()) * kMmPerPoint;
    }
    return sizes;
}

class PrintSheets : public testing::Test {
  protected:
    PrintSheets() : printer_(QPrinter::HighResolution) {
        printer_.setOutputFormat(QPrinter::PdfFormat);
        printer_.setOutputFileName(pdf_);
    }

    QTemporaryDir folder_;
    QString pdf_ = folder_.filePath("printed.pdf");
    QPrinter printer_;
};

struct PaperCase {
    const char* name;
    Orientation orientation;
    double widthMm;
    double heightMm;
};

TEST_F(PrintSheets, everySheetIsAPageOfItsPaper) {
    for (const PaperCase& c : {PaperCase{"A4", Orientation::portrait, 210, 297},
                               PaperCase{"A4", Orientation::landscape, 297, 210},
                               PaperCase{"Letter", Orientation::portrait, 215.9, 279.4},
                               PaperCase{"A0", Orientation::portrait, 841, 1189}}) {
        const auto sheets = sheetsOn(c.name, c.orientation);
        const auto end = printSheets(printer_, sheets, 0, sheets.size() - 1);
        ASSERT_TRUE(end);
        EXPECT_EQ(*end, PdfEnd::written);
        const QList<QSizeF> sizes = pageSizesOf(pdf_);
        ASSERT_EQ(sizes.size(), static_cast<qsizetype>(sheets.size())) << c.name;
        for (const QSizeF& size : sizes) {
            // Printers know paper in whole points: half of one, and the rounding of pdfinfo.
            EXPECT_NEAR(size.width(), c.widthMm, kMmPerPoint / 2 + 0.01) << c.name;
            EXPECT_NEAR(size.height(), c.heightMm, kMmPerPoint / 2 + 0.01) << c.name;
        }
    }
}

// The 100 mm square of the first page, as the dark pixels of its page at 300 dpi.
TEST_F(PrintSheets, linesComeOutAtTheirPlaceAndSize) {
    SheetDrawing page;
    page.name = "measured";
    page.widthMm = 210;
    page.heightMm = 297;
    const Path square = polylinePath({{50, 100}, {150, 100}, {150, 200}, {50, 200}, {50, 100}});
    page.strokes.push_back({square, 0.2, SheetDash::solid, SheetInk::cutting, false});
    ASSERT_TRUE(printSheets(printer_, {page}, 0, 0));
    const QString stem = folder_.filePath("page");
    saidBy("pdftoppm", {"-r", "300", "-gray", "-png", "-singlefile", pdf_, stem});
    const QImage image(stem + ".png");
    ASSERT_FALSE(image.isNull());
    QRect dark;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (qGray(image.pixel(x, y)) < 128) dark = dark.united(QRect(x, y, 1, 1));
        }
    }
    const double mmPerPx = 25.4 / 300;
    // Outer edges of a line of 0.2 mm; a pixel on each side.
    EXPECT_NEAR(dark.width() * mmPerPx, 100.2, 2 * mmPerPx);
    EXPECT_NEAR(dark.height() * mmPerPx, 100.2, 2 * mmPerPx);
    EXPECT_NEAR(dark.left() * mmPerPx, 49.9, 2 * mmPerPx);
    EXPECT_NEAR(dark.top() * mmPerPx, 297 - 200.1, kMmPerPoint / 2 + 2 * mmPerPx);
}

TEST_F(PrintSheets, aRangeIsPrintedAlone) {
    const auto sheets = sheetsOn("A4", Orientation::portrait);
    ASSERT_GT(sheets.size(), 3U);
    int told = 0;
    ASSERT_TRUE(printSheets(printer_, sheets, 1, 2, [&](int, int all) {
        EXPECT_EQ(all, 2);
        ++told;
        return true;
    }));
    EXPECT_EQ(told, 3) << "before each page and at the end";
    EXPECT_EQ(pageSizesOf(pdf_).size(), 2);
    const QString words = QString::fromUtf8(saidBy("pdftotext", {pdf_, "-"}));
    EXPECT_TRUE(words.contains(QString::fromStdString(sheets[1].name)));
    EXPECT_TRUE(words.contains(QString::fromStdString(sheets[2].name)));
}

TEST_F(PrintSheets, stoppedBetweenPagesIsToldAsStopped) {
    const auto sheets = sheetsOn("A4", Orientation::portrait);
    const auto end =
        printSheets(printer_, sheets, 0, sheets.size() - 1, [](int done, int) { return done < 2; });
    ASSERT_TRUE(end);
    EXPECT_EQ(*end, PdfEnd::stopped);
}

TEST_F(PrintSheets, pagesThatAreNotThereAreNotPrinted) {
    const auto sheets = sheetsOn("A4", Orientation::portrait);
    EXPECT_EQ(*printSheets(printer_, sheets, 2, 1), PdfEnd::stopped);
    EXPECT_EQ(*printSheets(printer_, sheets, 0, sheets.size()), PdfEnd::stopped);
    EXPECT_FALSE(QFile::exists(pdf_));
}

TEST_F(PrintSheets, aPrinterThatTakesNoJobIsNamed) {
    printer_.setOutputFileName(folder_.filePath("missing/printed.pdf"));
    const auto sheets = sheetsOn("A4", Orientation::portrait);
    const auto end = printSheets(printer_, sheets, 0, 0);
    ASSERT_FALSE(end);
    EXPECT_EQ(end.problems.at(0).code, ProblemCode::fileUnwritable);
}

// A PDF has no edge that can't be printed on.
TEST_F(PrintSheets, aFileHasNoUnprintableMargin) {
    setUpPrinter(printer_, sheetsOn("A4", Orientation::landscape));
    EXPECT_NEAR(unprintableMarginMm(printer_), 0, 1e-9);
    EXPECT_EQ(printer_.pageLayout().orientation(), QPageLayout::Landscape);
    EXPECT_TRUE(printer_.fullPage());
}

}  // namespace
}  // namespace coutil
