#include "ui/benches/fit_problem_part.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/benches/problem_list.h"

namespace coutil {
namespace {

Problem narrow(Severity severity) {
    return {.code = ProblemCode::panelTooNarrow,
            .severity = severity,
            .subject = "waist",
            .detail = {},
            .panel = "3",
            .at = {},
            .figures = {{"value", 10}, {"limit", 12}}};
}

TEST(FitProblemPartTest, aNoteIsSetAsideWithAReasonAndTakenBack) {
    FitProblemPart part;
    part.show();
    std::vector<SetAside> kept;
    QObject::connect(&part, &FitProblemPart::setAside, &part,
                     [&](const SetAside& aside) { kept.push_back(aside); });
    int takenBack = 0;
    QObject::connect(&part, &FitProblemPart::takenBack, &part, [&] { ++takenBack; });
    part.showProblems({narrow(Severity::note)}, kept, true, LengthUnit::centimetre);
    auto* button = part.findChild<QPushButton*>("setAside");
    auto* reason = part.findChild<QLineEdit*>("reasonToSetAside");
    ASSERT_NE(button, nullptr);
    EXPECT_FALSE(reason->isVisible());
    button->click();
    ASSERT_TRUE(reason->isVisible());
    QTest::keyClick(reason, Qt::Key_Return);  // no reason, not set aside
    EXPECT_TRUE(kept.empty());
    QTest::keyClicks(reason, "lined with coutil");
    QTest::keyClick(reason, Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept[0], (SetAside{"panel_too_narrow", "waist", "3", "lined with coutil"}));
    part.showProblems({narrow(Severity::note)}, kept, true, LengthUnit::centimetre);
    EXPECT_FALSE(part.findChild<ProblemLine*>()->isEnabled());
    button->click();
    EXPECT_EQ(takenBack, 1);
}

TEST(FitProblemPartTest, errorsStay) {
    FitProblemPart part;
    part.show();
    part.showProblems({narrow(Severity::error)}, {}, true, LengthUnit::centimetre);
    EXPECT_FALSE(part.findChild<QPushButton*>("setAside")->isVisible());
    part.showProblems({narrow(Severity::warning)}, {}, true, LengthUnit::centimetre);
    EXPECT_TRUE(part.findChild<QPushButton*>("setAside")->isVisible());
}

}  // namespace
}  // namespace coutil
