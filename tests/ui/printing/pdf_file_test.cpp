#include "ui/printing/pdf_file.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "tests/core/sheets/made_up_tracings.h"
#include "tests/ui/printing/sheet_truth.h"

namespace coutil {
namespace {

std::vector<SheetDrawing> someSheets() {
    const auto tracings = madeUpCorset(4);
    return drawSheets(*planSheets(tracings, {}), tracings, testWords());
}

PdfInfo someInfo() {
    return {QStringLiteral("Corset"), QDateTime(QDate(2026, 3, 14), QTime(12, 0), Qt::UTC)};
}

QByteArray contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList filesIn(const QTemporaryDir& folder) {
    return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
}

TEST(PdfFile, isTheSameToTheByteForTheSameDate) {
    const QTemporaryDir folder;
    const QString first = folder.filePath("first.pdf");
    const QString second = folder.filePath("second.pdf");
    ASSERT_TRUE(writeSheetsPdf(someSheets(), someInfo(), first));
    ASSERT_TRUE(writeSheetsPdf(someSheets(), someInfo(), second));
    EXPECT_FALSE(contentOf(first).isEmpty());
    EXPECT_EQ(contentOf(first), contentOf(second));
    EXPECT_EQ(filesIn(folder).size(), 2);
}

TEST(PdfFile, tellsNothingOfMachineOrProgramParts) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("sheets.pdf");
    ASSERT_TRUE(writeSheetsPdf(someSheets(), someInfo(), path));
    const QByteArray bytes = contentOf(path);
    EXPECT_TRUE(bytes.contains("D:20260314120000Z"));
    EXPECT_FALSE(bytes.contains(QDir::homePath().toUtf8()));
    EXPECT_FALSE(bytes.contains("Qt "));
    EXPECT_FALSE(bytes.contains("/Author"));
}

TEST(PdfFile, stoppedLeavesTheOldFileAndNothingElse) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("sheets.pdf");
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    const auto sheets = someSheets();
    for (std::size_t stopAt = 0; stopAt <= sheets.size(); ++stopAt) {
        const auto end = writeSheetsPdf(sheets, someInfo(), path, [&](int done, int all) {
            EXPECT_EQ(all, static_cast<int>(sheets.size()));
            return done != static_cast<int>(stopAt);
        });
        ASSERT_TRUE(end);
        EXPECT_EQ(*end, PdfEnd::stopped);
        EXPECT_EQ(contentOf(path), "old");
        EXPECT_EQ(filesIn(folder), QStringList{"sheets.pdf"});
    }
}

TEST(PdfFile, unwritablePlacesAreNamed) {
    const QTemporaryDir folder;
    for (const QString& path : {folder.filePath("missing/sheets.pdf"), folder.path()}) {
        const auto end = writeSheetsPdf(someSheets(), someInfo(), path);
        ASSERT_FALSE(end);
        ASSERT_EQ(end.problems.size(), 1U);
        EXPECT_EQ(end.problems[0].code, ProblemCode::fileUnwritable);
        EXPECT_EQ(end.problems[0].subject, path.toStdString());
        EXPECT_FALSE(end.problems[0].detail.empty());
    }
    EXPECT_TRUE(filesIn(folder).isEmpty());
}

// /dev/full takes no byte: the kernel's own full disk. Every Linux has it.
TEST(PdfFile, fullDiskIsSaid) {
    ASSERT_TRUE(QFile::exists("/dev/full"));
    const auto end = writeSheetsPdf(someSheets(), someInfo(), "/dev/full");
    ASSERT_FALSE(end);
    EXPECT_EQ(end.problems.at(0).code, ProblemCode::diskFull);
    EXPECT_EQ(end.problems.at(0).subject, "/dev/full");
}

}  // namespace
}  // namespace coutil
