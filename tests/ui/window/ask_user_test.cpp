// The real dialog for unsaved changes, answered by pressing its buttons.
#include "ui/window/ask_user.h"

#include <QAbstractButton>
#include <QApplication>
#include <QMessageBox>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace coutil {
namespace {

// Presses the button of this role in the dialog that comes up next.
LeaveChoice answeredWith(QMessageBox::ButtonRole role) {
    QTimer::singleShot(0, qApp, [role] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        EXPECT_TRUE(box->text().contains("Leonore"));
        for (QAbstractButton* button : box->buttons()) {
            if (box->buttonRole(button) == role) {
                button->click();
                return;
            }
        }
        box->reject();
    });
    DialogAskUser ask;
    return ask.unsavedChanges(nullptr, "Leonore");
}

TEST(AskUser, unsavedChangesAreSavedDroppedOrKept) {
    EXPECT_EQ(answeredWith(QMessageBox::AcceptRole), LeaveChoice::save);
    EXPECT_EQ(answeredWith(QMessageBox::DestructiveRole), LeaveChoice::drop);
    EXPECT_EQ(answeredWith(QMessageBox::RejectRole), LeaveChoice::stay);
}

TEST(AskUser, escapeStays) {
    QTimer::singleShot(0, qApp,
                       [] { QTest::keyClick(QApplication::activeModalWidget(), Qt::Key_Escape); });
    DialogAskUser ask;
    EXPECT_EQ(ask.unsavedChanges(nullptr, "Leonore"), LeaveChoice::stay);
}

TEST(AskUser, anUnansweredQuestionStaysAndIsCounted) {
    QueuedAnswers answers;
    EXPECT_EQ(answers.unsavedChanges(nullptr, "Leonore"), LeaveChoice::stay);
    EXPECT_TRUE(answers.fileToOpen(nullptr, {}).isEmpty());
    EXPECT_EQ(answers.unanswered, 2);
}

}  // namespace
}  // namespace coutil
