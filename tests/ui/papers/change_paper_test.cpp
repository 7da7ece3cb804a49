// The change sheet as PDF, read by a program that shares nothing with the one that wrote it
// (tests/ui/printing/read_back.py). Paper sizes: ISO 216 and ANSI/ASME Y14.1, from memory.
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/sheets/change_sheet.h"
#include "core/sheets/sheet_drawing.h"
#include "tests/core/block/sample_bodies.h"
#include "ui/papers/change_words.h"
#include "ui/printing/pdf_file.h"

namespace coutil {
namespace {

Pattern corset(double waistEaseMm) {
    Style style;
    style.easeMm[LevelId::waist] = waistEaseMm;
    return *draftCorset(samples::average(), style);
}

ChangeWords words() {
    const TracingTitle title{"Corset of the second act", "Rosalinde Amsel", "2", "2026-03-18",
                             false};
    return changeWords(title, {"revision 1, 2026-03-02", "revision 1"},
                       {"revision 2, 2026-03-18", "revision 2"}, {}, LengthUnit::centimetre);
}

QJsonArray chainOf(const std::vector<Point>& points) {
    QJsonArray chain;
    for (const Point& p : points) chain.append(QJsonArray{p.x(), p.y()});
    return chain;
}

// Where the panels of a pattern lie on the drawing, and the parts of them farther than `offMm` from
// the same panel of the other.
struct Truth {
    QJsonArray lieOn;
    QJsonArray wanted;
};
void addTruth(const Panel& panel, const Vector& shift, const Panel& other, const Vector& otherShift,
              const Placement& placement, Truth& truth) {
    const Path outline = placed(outlineOf(panel), {0, shift, false});
    const Path old = placed(outlineOf(other), {0, otherShift, false});
    truth.lieOn.append(chainOf(flattened(placed(outline, placement), 0.001)));
    std::vector<Point> run;
    const auto finish = [&] {
        if (run.size() > 1) truth.wanted.append(chainOf(run));
        run.clear();
    };
    for (double at = 0; at < lengthMm(outline); at += 0.5) {
        const Point p = pointAtLength(outline, at);
        // Half a millimetre and more: no end of a stretch and no neighbouring edge is near.
        if (closestOn(old, p).distanceMm < 0.5) {
            finish();
        } else {
            run.push_back(placed(p, placement));
        }
    }
    finish();
}

double mm(long long um) { return static_cast<double>(um) / 1000; }

bool writeTruth(const ChangeSheet& sheet, const Pattern& a, const Pattern& b, const QString& path) {
    Truth old;
    Truth now;
    for (const PanelChange& change : changedLines(a, b)) {
        for (const PlacedTracing& lying : sheet.plan.placed) {
            if (sheet.pieces[lying.tracing].place.panel != change.name) continue;
            const Panel& was = a.panels[*change.inA];
            const Panel& is = b.panels[*change.inB];
            const Vector zero = Vector::Zero();
            addTruth(was, zero, is, change.shiftOfB, lying.placement, old);
            addTruth(is, change.shiftOfB, was, zero, lying.placement, now);
        }
    }
    const SheetPlan& plan = sheet.plan;
    QJsonArray sheets;
    for (const Sheet& one : plan.sheets) {
        sheets.append(QJsonObject{{"name", QString::fromStdString(nameOf(one))},
                                  {"x", mm(one.column * plan.stepXUm)},
                                  {"y", mm((plan.rows - 1 - one.row) * plan.stepYUm)},
                                  {"neighbours", QJsonArray()}});
    }
    const QJsonObject truth{{"title", "Change sheet"},
                            {"widthMm", mm(plan.sheetWidthUm)},
                            {"heightMm", mm(plan.sheetHeightUm)},
                            {"marginMm", mm(plan.options.marginUm)},
                            {"frameMm", QJsonArray{mm(plan.frameXUm), mm(plan.frameYUm)}},
                            {"factors", QJsonArray{1, 1}},
                            {"firstPageApart", true},
                            {"sheets", sheets},
                            {"lines", QJsonArray{QJsonObject{{"kind", "new"},
                                                             {"widthMm", 0.5},
                                                             {"lieOn", now.lieOn},
                                                             {"wanted", now.wanted}},
                                                 QJsonObject{{"kind", "old"},
                                                             {"widthMm", 0.18},
                                                             {"lieOn", old.lieOn},
                                                             {"wanted", old.wanted}}}}};
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(QJsonDocument(truth).toJson()) > 0;
}

struct Reading {
    int exitCode = -1;
    std::string said;
};

Reading readBack(const ChangeSheet& sheet, const Pattern& a, const Pattern& b) {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath("change.pdf");
    const QString truth = folder.filePath("truth.json");
    EXPECT_TRUE(writeSheetsPdf(sheet.pages, {QStringLiteral("Change sheet"), {}}, pdf));
    EXPECT_TRUE(writeTruth(sheet, a, b, truth));
    if (const QString kept = qEnvironmentVariable("COUTIL_KEEP"); !kept.isEmpty())
        QFile::copy(pdf, kept + "/change.pdf");
    QProcess reader;
    reader.setProcessChannelMode(QProcess::MergedChannels);
    reader.start("python3", {COUTIL_SOURCE_DIR "/tests/ui/printing/read_back.py", pdf, truth});
    EXPECT_TRUE(reader.waitForFinished(120'000));
    return {reader.exitCode(), reader.readAll().toStdString()};
}

class ChangePaper : public testing::TestWithParam<const char*> {};

TEST_P(ChangePaper, linesOnTheSheetsAreThoseOfThePatterns) {
    const Pattern a = corset(-60);
    const Pattern b = corset(-90);
    SheetOptions options;
    options.paper = *paperNamed(GetParam());
    options.orientation = Orientation::portrait;
    const auto sheet = changeSheet(a, b, {2}, options, words());
    ASSERT_TRUE(sheet);
    const Reading reading = readBack(*sheet, a, b);
    std::cout << reading.said;
    EXPECT_EQ(reading.exitCode, 0) << reading.said;
    // The reader must see a line that is off, or this test says nothing.
    EXPECT_EQ(readBack(*sheet, a, corset(-91)).exitCode, 1);
}

INSTANTIATE_TEST_SUITE_P(papers, ChangePaper, testing::Values("A4", "Letter"));

TEST(ChangePaperWords, whatDidNotChangeIsNamedAndNotPrinted) {
    const Pattern a = corset(-60);
    Pattern b = a;
    // The foot of one panel only: 8 mm longer in the middle.
    for (Cubic& c : b.panels[1].edges[0].path.pieces) {
        c.p1.y() -= 8;
        c.p2.y() -= 8;
    }
    const auto sheet = changeSheet(a, b, {0}, {}, words());
    ASSERT_TRUE(sheet);
    ASSERT_EQ(sheet->pieces.size(), 1U);
    EXPECT_EQ(sheet->pieces[0].place.panel, "2");
    std::string first;
    for (const auto& lettering : sheet->pages[0].letterings) first += lettering.text + " ";
    EXPECT_NE(first.find("Unchanged and not printed: panels 1, 3, 4, 5."), std::string::npos)
        << first;
    for (const auto& stroke : sheet->pages.back().strokes) EXPECT_EQ(stroke.revision, 0);
}

TEST(ChangePaperWords, nothingChangedIsOneProblem) {
    const Pattern a = corset(-60);
    const auto sheet = changeSheet(a, a, {2}, {}, words());
    EXPECT_FALSE(sheet);
    ASSERT_EQ(sheet.problems.size(), 1U);
    EXPECT_EQ(sheet.problems[0].code, ProblemCode::nothingChanged);
    EXPECT_EQ(sheet.problems[0].subject, "revision 1, 2026-03-02");
}

}  // namespace
}  // namespace coutil
