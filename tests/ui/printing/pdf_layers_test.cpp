// Layers of the PDF, seen by programs that know nothing of Coutil (check_layers.py), and a page
// that is larger than 14,400 points.
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "tests/core/sheets/made_up_tracings.h"
#include "tests/ui/printing/sheet_truth.h"
#include "ui/printing/pdf_file.h"
#include "ui/printing/pdf_parts.h"

namespace coutil {
namespace {

struct Told {
    int exitCode = -1;
    QString said;
};

Told python(const QStringList& words) {
    QProcess reader;
    reader.setProcessChannelMode(QProcess::MergedChannels);
    reader.start("/usr/bin/python3", words);
    EXPECT_TRUE(reader.waitForFinished(120'000));
    return {reader.exitCode(), QString::fromUtf8(reader.readAll())};
}

class PdfLayers : public testing::TestWithParam<const char*> {};

TEST_P(PdfLayers, everyKindOfLineIsSwitchedByItself) {
    SheetOptions options;
    options.paper = *paperNamed(GetParam());
    const auto tracings = madeUpCorset(4);
    const auto plan = planSheets(tracings, options);
    ASSERT_TRUE(plan);
    const QTemporaryDir folder;
    const QString pdf = folder.filePath("sheets.pdf");
    const QString truth = folder.filePath("truth.json");
    const PdfInfo info{QStringLiteral("Layers"), {}};
    ASSERT_TRUE(writeSheetsPdf(drawSheets(*plan, tracings, testWords()), info, pdf));
    ASSERT_TRUE(writeTruth(*plan, tracings, info.title, truth));
    const Told told =
        python({COUTIL_SOURCE_DIR "/tests/ui/printing/check_layers.py", pdf, truth, folder.path()});
    std::cout << told.said.toStdString();
    EXPECT_EQ(told.exitCode, 0) << told.said.toStdString();
}

INSTANTIATE_TEST_SUITE_P(papers, PdfLayers, testing::Values("A3", "One page"),
                         [](const auto& tested) {
                             return std::string(tested.param) == "A3" ? "A3" : "onePage";
                         });

TEST(PdfParts, holdEverythingOnce) {
    SheetDrawing drawing;
    drawing.widthMm = 100;
    drawing.heightMm = 50;
    drawing.strokes = {{straightPath({0, 0}, {1, 1})}, {straightPath({2, 0}, {1, 1})}};
    drawing.strokes[0].kind = LineKind::sewing;
    drawing.letterings = {{"3", {1, 1}, 20, 0, TextAnchor::left, SheetInk::pale}, {"words"}};
    drawing.letterings[0].kind = LineKind::labels;
    const auto parts = partsOf(drawing);
    ASSERT_EQ(parts.size(), 3U);
    EXPECT_EQ(parts[0].kind, LineKind::labels) << "pale ink lies under all lines";
    EXPECT_EQ(parts[1].kind, std::nullopt);
    EXPECT_EQ(parts[1].drawing.strokes.size(), 1U);
    EXPECT_EQ(parts[1].drawing.letterings.size(), 1U);
    EXPECT_EQ(parts[2].kind, LineKind::sewing);
    drawing.strokes[0].kind.reset();
    drawing.letterings[0].kind.reset();
    EXPECT_EQ(partsOf(drawing).size(), 1U);
}

// 14,400 units are 5.08 m (ISO 32000-1, annex C, from memory); 6 m want units of 2/72 in.
TEST(PdfFile, aPageOverFourteenThousandPointsHasALargerUnit) {
    SheetDrawing drawing;
    drawing.widthMm = 6000;
    drawing.heightMm = 300;
    drawing.strokes = {{straightPath({100, 100}, {5600, 100})}};
    const QTemporaryDir folder;
    const QString pdf = folder.filePath("long.pdf");
    ASSERT_TRUE(writeSheetsPdf({drawing}, {}, pdf));
    const Told told = python(
        {"-c",
         "import pikepdf,sys\n"
         "d=pikepdf.open(sys.argv[1])\n"
         "p=d.pages[0]\n"
         "u=float(p.UserUnit)\n"
         "m=pikepdf.PdfMatrix(); xs=[]; s=[]; c=[]\n"
         "for o,op in pikepdf.parse_content_stream(p):\n"
         "  op=str(op)\n"
         "  if op=='q': s.append(m)\n"
         "  if op=='Q': m=s.pop()\n"
         "  if op=='cm': m=pikepdf.PdfMatrix(*[float(x) for x in o]) @ m\n"
         "  if op in 'ml' and len(o)==2: c.append(float(o[0])*m.a+m.e)\n"
         "  if op=='S': xs+=c\n"
         "  if op in ('S','n','f'): c=[]\n"
         "mm=25.4/72*u\n"
         "print(u, float(p.MediaBox[2])*mm, float(p.MediaBox[3])*mm, min(xs)*mm, max(xs)*mm)",
         pdf});
    ASSERT_EQ(told.exitCode, 0) << told.said.toStdString();
    const QStringList figures = told.said.simplified().split(' ');
    ASSERT_EQ(figures.size(), 5) << told.said.toStdString();
    EXPECT_EQ(figures[0].toDouble(), 2);
    EXPECT_NEAR(figures[1].toDouble(), 6000, 0.001);
    EXPECT_NEAR(figures[2].toDouble(), 300, 0.001);
    EXPECT_NEAR(figures[3].toDouble(), 100, 0.01);
    EXPECT_NEAR(figures[4].toDouble(), 5600, 0.01);
}

}  // namespace
}  // namespace coutil
