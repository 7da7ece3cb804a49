// The window is killed in the middle of unsaved work (SIGKILL: no destructor, no handler runs); the
// next start offers it.
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "core/store/folio_file.h"
#include "tests/ui/window/singer.h"
#include "ui/document/state_folder.h"

namespace coutil {
namespace {

class KilledWindow : public testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(home_.isValid());
        ASSERT_FALSE(writeFolio(singer_, pathOf(folio_)));
    }

    // A home of its own; no display.
    void start(QProcess& child, const QStringList& words) {
        QProcessEnvironment surroundings;
        surroundings.insert("HOME", home_.path());
        surroundings.insert("LC_ALL", "C.UTF-8");
        surroundings.insert("QT_QPA_PLATFORM", "offscreen");
        child.setProcessEnvironment(surroundings);
        child.start(COUTIL_KILLED_CHILD, words);
        ASSERT_TRUE(child.waitForStarted(30'000));
    }
    static QByteArray lineOf(QProcess& child) {
        while (!child.canReadLine() && child.waitForReadyRead(60'000)) {
        }
        return child.readLine().trimmed();
    }

    const Folio singer_ = singersFolio();
    QTemporaryDir home_;
    QString folio_ = home_.filePath("singer.coutil");
};

TEST_F(KilledWindow, unsavedWorkIsOfferedByTheNextStart) {
    QProcess child;
    start(child, {"change", folio_});
    ASSERT_EQ(lineOf(child), "changed") << child.readAllStandardError().toStdString();
    child.kill();
    ASSERT_TRUE(child.waitForFinished(30'000));
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit);
    EXPECT_EQ(*readFolio(pathOf(folio_)), singer_) << "the folio holds the old state";

    QProcess next;
    start(next, {"look"});
    EXPECT_EQ(lineOf(next), "730") << next.readAllStandardError().toStdString();
    EXPECT_TRUE(next.waitForFinished(30'000));
    EXPECT_EQ(next.exitStatus(), QProcess::NormalExit);
}

TEST_F(KilledWindow, withoutADeadWindowNothingIsOffered) {
    QProcess child;
    start(child, {"look"});
    EXPECT_EQ(lineOf(child), "nothing is offered");
    EXPECT_TRUE(child.waitForFinished(30'000));
}

}  // namespace
}  // namespace coutil
