// The papers that go out by post, as PDF, read by the tools of poppler. Paper sizes: ISO 216 and
// ANSI/ASME Y14.1, from memory; a point is 1/72 in (ISO 32000-1).
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "tests/core/block/sample_bodies.h"
#include "ui/papers/fitting_paper.h"
#include "ui/papers/measuring_paper.h"
#include "ui/printing/pdf_file.h"
#include "ui/words/trade_words.h"

namespace coutil {
namespace {

QString saidBy(const QString& tool, const QStringList& words) {
    QProcess process;
    process.start(tool, words);
    EXPECT_TRUE(process.waitForFinished(60'000)) << tool.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << tool.toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

// Letters that a font joins ("fi") are two again.
QString wordsOf(const QString& pdf) {
    const QString said = saidBy("pdftotext", {"-raw", pdf, "-"});
    return said.normalized(QString::NormalizationForm_KC).simplified();
}

struct Printed {
    QString info;
    QString words;  // blanks and line ends are one blank
    QString fonts;
    int pages = 0;
};

Printed printed(const std::vector<SheetDrawing>& pages, const char* name) {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath("paper.pdf");
    EXPECT_TRUE(writeSheetsPdf(pages, {QStringLiteral("paper"), {}}, pdf));
    if (const QString kept = qEnvironmentVariable("COUTIL_KEEP"); !kept.isEmpty())
        QFile::copy(pdf, kept + "/" + name + ".pdf");
    saidBy("qpdf", {"--check", pdf});
    return {saidBy("pdfinfo", {pdf}), wordsOf(pdf), saidBy("pdffonts", {pdf}),
            static_cast<int>(pages.size())};
}

PaperHead headOn(const char* paper) {
    PaperHead head;
    head.paper = *paperNamed(paper);
    head.client = "Alto 3";
    head.garment = "Chorus bodice 50% off";
    head.state = "revision 2";
    head.printedOn = QDate(2026, 3, 18);
    return head;
}

Pattern corset(int panels) {
    Style style;
    style.panelsPerHalf = panels;
    return *draftCorset(samples::average(), style);
}

void expectOnPaper(const Printed& paper, double widthMm, double heightMm) {
    static const QRegularExpression size("Page size: +([0-9.]+) x ([0-9.]+) pts");
    const auto match = size.match(paper.info);
    ASSERT_TRUE(match.hasMatch()) << paper.info.toStdString();
    EXPECT_NEAR(match.captured(1).toDouble() * 25.4 / 72, widthMm, 0.01);
    EXPECT_NEAR(match.captured(2).toDouble() * 25.4 / 72, heightMm, 0.01);
    EXPECT_TRUE(paper.fonts.contains("yes"));
    EXPECT_FALSE(paper.fonts.contains(QRegularExpression(" no +(yes|no) +(yes|no) ")));
}

// No word and no line beyond the paper's margins, none over another word.
void expectTidy(const std::vector<SheetDrawing>& pages) {
    for (const auto& page : pages) {
        for (const auto& lettering : page.letterings) {
            EXPECT_GE(lettering.at.x(), page.marginMm) << lettering.text;
            EXPECT_LE(lettering.at.x(), page.widthMm - page.marginMm) << lettering.text;
            EXPECT_GE(lettering.at.y(), page.marginMm) << lettering.text;
            EXPECT_LE(lettering.at.y() + lettering.heightMm, page.heightMm - page.marginMm)
                << lettering.text;
        }
        for (const auto& stroke : page.strokes) {
            const Box box = boundsOf(stroke.path);
            EXPECT_GE(box.lowest.x(), page.marginMm);
            EXPECT_LE(box.highest.x(), page.widthMm - page.marginMm);
            EXPECT_GE(box.lowest.y(), page.marginMm);
            EXPECT_LE(box.highest.y(), page.heightMm - page.marginMm);
        }
    }
}

TEST(MeasuringPaper, asksForEverythingAStyleNeedsWithHowToTakeIt) {
    const auto pages = measuringPaper(headOn("A4"));
    const Printed paper = printed(pages, "measuring");
    expectOnPaper(paper, 210, 297);
    expectTidy(pages);
    EXPECT_LE(paper.pages, 3);
    for (const MeasurementInfo& info : measurementCatalogue()) {
        if (!info.isNeededForCorset) continue;
        EXPECT_TRUE(paper.words.contains(measurementTerm(info.id) + " *"))
            << measurementTerm(info.id).toStdString();
    }
    for (const Measurement id : measurementsToAskFor()) {
        EXPECT_TRUE(paper.words.contains(measurementHow(id).simplified()))
            << measurementHow(id).toStdString();
    }
    EXPECT_TRUE(paper.words.contains("Alto 3"));
    EXPECT_TRUE(paper.words.contains(QString("page %1 of %1").arg(paper.pages)));
}

TEST(MeasuringPaper, inInchesOnLetterWithoutAName) {
    PaperHead head = headOn("Letter");
    head.unit = LengthUnit::inch;
    head.client.clear();
    const auto pages = measuringPaper(head);
    const Printed paper = printed(pages, "measuring-letter");
    expectOnPaper(paper, 215.9, 279.4);
    expectTidy(pages);
    EXPECT_FALSE(paper.words.contains("Alto 3"));
    EXPECT_TRUE(paper.words.contains("inches"));
    EXPECT_FALSE(paper.words.contains("centimetre"));
}

TEST(FittingPaper, hasARowForEverySeamAtEveryLevelItCrosses) {
    const Pattern pattern = corset(5);
    const auto places = readingPlaces(pattern);
    std::size_t expected = 0;
    for (const Seam& seam : pattern.seams) {
        expected += pattern.panels[seam.front.panel].levels.size() + 2;
        const auto waist = std::ranges::find_if(places, [&](const ReadingPlace& p) {
            return p.seam == seam.name && p.level == "waist";
        });
        ASSERT_NE(waist, places.end());
        EXPECT_NEAR(waist->positionMm, 0, 1e-6);
    }
    EXPECT_EQ(places.size(), expected);
    const auto bust = std::ranges::find(places, "bust", &ReadingPlace::level);
    ASSERT_NE(bust, places.end());
    EXPECT_GT(bust->positionMm, 130) << "along the seam it is farther than the height of 130 mm";
}

TEST(FittingPaper, onePageOfWordsAndOneOfTable) {
    for (const char* name : {"A4", "Letter"}) {
        for (const int panels : {4, 5, 7}) {
            const auto pages = fittingPaper(corset(panels), headOn(name), QDate(2026, 4, 1));
            expectTidy(pages);
            EXPECT_LE(pages.size(), 2U) << name << " " << panels;
        }
    }
    const auto pages = fittingPaper(corset(6), headOn("A4"), QDate(2026, 4, 1));
    const Printed paper = printed(pages, "fitting");
    expectOnPaper(paper, 210, 297);
    for (const char* words : {"pinned", "opened", "left", "right", "5-6", "NOT to scale", "by",
                              "1 April 2026", "numbness", "revision 2", "doctor"}) {
        EXPECT_TRUE(paper.words.contains(words)) << words;
    }
}

TEST(FittingPaper, withoutADateNoneIsAskedFor) {
    const Printed paper = printed(fittingPaper(corset(4), headOn("Letter"), {}), "fitting-letter");
    expectOnPaper(paper, 215.9, 279.4);
    EXPECT_FALSE(paper.words.contains("send it back by"));
}

}  // namespace
}  // namespace coutil
