#include "ui/benches/problem_list.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/words/problem_sentence.h"

namespace coutil {
namespace {

Problem narrow(Severity severity, const char* panel) {
    Problem problem;
    problem.code = ProblemCode::panelTooNarrow;
    problem.severity = severity;
    problem.panel = panel;
    problem.subject = "waist";
    problem.figures = {{"value", 9}, {"limit", 12}};
    return problem;
}

class ProblemListTest : public testing::Test {
  protected:
    ProblemListTest() {
        list.resize(320, 300);
        list.showProblems({narrow(Severity::warning, "2"), narrow(Severity::error, "4")},
                          LengthUnit::centimetre);
        list.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&list));
    }
    QList<ProblemLine*> lines() { return list.findChildren<ProblemLine*>(); }

    ProblemList list;
};

TEST_F(ProblemListTest, errorsComeFirstAndSayWhatTheyAre) {
    ASSERT_EQ(lines().size(), 2);
    EXPECT_EQ(list.problems().front().panel, "4");
    EXPECT_TRUE(lines()[0]->accessibleName().startsWith("Error: "));
    EXPECT_TRUE(lines()[0]->accessibleName().contains(
        problemSentence(list.problems().front(), LengthUnit::centimetre)));
    EXPECT_TRUE(lines()[1]->accessibleName().startsWith("Warning: "));
}

TEST_F(ProblemListTest, keyboardPointsAndChooses) {
    lines()[0]->clearFocus();  // the window gave it the keyboard when it opened
    QSignalSpy pointed(&list, &ProblemList::pointed);
    QSignalSpy away(&list, &ProblemList::pointedAway);
    QSignalSpy chosen(&list, &ProblemList::chosen);
    lines()[0]->setFocus();
    ASSERT_EQ(pointed.size(), 1);
    EXPECT_EQ(pointed[0][0].value<Problem>().panel, "4");
    QTest::keyClick(lines()[0], Qt::Key_Return);
    ASSERT_EQ(chosen.size(), 1);
    lines()[1]->setFocus();
    EXPECT_EQ(away.size(), 1);
    EXPECT_EQ(pointed.last()[0].value<Problem>().panel, "2");
}

TEST_F(ProblemListTest, aClickChoosesAndLinesOfFormerProblemsGo) {
    QSignalSpy chosen(&list, &ProblemList::chosen);
    QTest::mouseClick(lines()[1], Qt::LeftButton);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].value<Problem>().panel, "2");
    list.showProblems({}, LengthUnit::centimetre);
    for (ProblemLine* line : lines()) EXPECT_FALSE(line->isVisibleTo(&list));
}

}  // namespace
}  // namespace coutil
