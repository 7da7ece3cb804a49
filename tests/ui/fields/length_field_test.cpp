// The field for one length, typed into as a maker does.
#include "ui/fields/length_field.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLocale>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace coutil {
namespace {

class LengthFieldTest : public testing::Test {
  protected:
    void SetUp() override {
        field_.show();
        field_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&field_));
        field_.setFocus();
        QObject::connect(&field_, &LengthField::edited, &field_,
                         [this](std::optional<double> mm, const QString& text) {
                             ++edits_;
                             mm_ = mm;
                             text_ = text;
                         });
        QObject::connect(&field_, &LengthField::unreadable, &field_,
                         [this](const Problem& problem) { problem_ = problem.code; });
    }

    void type(const QString& text) {
        field_.selectAll();
        QTest::keyClick(&field_, Qt::Key_Delete);
        QTest::keyClicks(&field_, text);
    }

    LengthField field_;
    int edits_ = 0;
    std::optional<double> mm_;
    QString text_;
    std::optional<ProblemCode> problem_;
};

// 1 in = 25.4 mm exactly (international yard and pound agreement, 1959); the sums by hand.
TEST_F(LengthFieldTest, readsUnitsFractionsAndSums) {
    const QList<QPair<QString, double>> typed{
        {"96", 960},           {"96 cm", 960},           {"32,5 cm", 325}, {"380 mm", 380},
        {"37 3/4 in", 958.85}, {"12 + 3/8 in", 314.325}, {"96 - 2", 940},  {"1.5 in", 38.1},
    };
    for (const auto& [text, mm] : typed) {
        type(text);
        ASSERT_TRUE(mm_.has_value()) << text.toStdString();
        EXPECT_NEAR(*mm_, mm, 1e-9) << text.toStdString();
        EXPECT_EQ(text_, text);
        EXPECT_TRUE(field_.isReadable());
    }
}

TEST_F(LengthFieldTest, bareFiguresAreOfItsUnit) {
    field_.setUnit(LengthUnit::inch);
    type("30 1/4");
    EXPECT_NEAR(*mm_, 768.35, 1e-9);
}

TEST_F(LengthFieldTest, whatIsNoLengthIsToldAndChangesNothing) {
    field_.setValueMm(960);
    const int before = edits_;
    QTest::keyClicks(&field_, "x");
    EXPECT_EQ(problem_, ProblemCode::lengthUnreadable);
    EXPECT_FALSE(field_.isReadable());
    EXPECT_EQ(edits_, before);
    EXPECT_DOUBLE_EQ(*field_.valueMm(), 960);
    field_.setValueMm(960);  // the document shows itself again: the maker's text stays to be mended
    EXPECT_EQ(field_.text(), "96x");
    field_.setValueMm(950);  // another value comes from elsewhere: it wins
    EXPECT_EQ(field_.text(), "95");
    EXPECT_TRUE(field_.isReadable());
}

TEST_F(LengthFieldTest, negativesAndRefusedFiguresAreTold) {
    field_.setMayBeNegative(false);
    type("-4");
    EXPECT_EQ(problem_, ProblemCode::lengthNegative);
    problem_.reset();
    field_.setJudge([](double mm) -> std::optional<Problem> {
        if (mm < 500) return Problem{ProblemCode::measurementImpossible, {}, {}, {}, {}, {}, {}};
        return std::nullopt;
    });
    type("9");
    EXPECT_EQ(problem_, ProblemCode::measurementImpossible);
    QTest::keyClicks(&field_, "6");
    EXPECT_DOUBLE_EQ(*field_.valueMm(), 960);
}

TEST_F(LengthFieldTest, whatWasReadOnTheWayToARefusedTextIsGivenBack) {
    field_.setValueMm(760);
    field_.clearFocus();
    field_.setFocus();
    type("99 ells");
    EXPECT_FALSE(field_.isReadable());
    EXPECT_DOUBLE_EQ(*field_.valueMm(), 760);
    EXPECT_DOUBLE_EQ(*mm_, 760);
    EXPECT_EQ(text_, "76") << "with the text that stood there";
    EXPECT_EQ(field_.text(), "99 ells");
}

TEST_F(LengthFieldTest, emptyMeansNoValue) {
    field_.setValueMm(960);
    field_.selectAll();
    QTest::keyClick(&field_, Qt::Key_Delete);
    EXPECT_EQ(edits_, 1);
    EXPECT_FALSE(mm_.has_value());
    EXPECT_FALSE(field_.valueMm().has_value());
}

TEST_F(LengthFieldTest, settingDoesNotSignalAndKeepsTextThatMeansTheSame) {
    type("37 3/4 in");
    const int before = edits_;
    field_.setValueMm(958.85);
    EXPECT_EQ(field_.text(), "37 3/4 in");
    field_.setWrittenText("96", 960);
    EXPECT_EQ(field_.text(), "96");
    field_.setWrittenText("96", 961);  // a text that means something else is not shown
    EXPECT_EQ(field_.text(), "96.1");
    EXPECT_EQ(edits_, before);
}

TEST_F(LengthFieldTest, anotherUnitShowsTheSameLength) {
    field_.setValueMm(958.85);
    EXPECT_EQ(field_.text(), "95.89");
    field_.setUnit(LengthUnit::inch);
    EXPECT_EQ(field_.text(), "37 3/4");
    EXPECT_DOUBLE_EQ(*field_.valueMm(), 958.85) << "showing never rounds the value";
}

TEST_F(LengthFieldTest, arrowsStepByTheShownUnit) {
    field_.setValueMm(960);
    QTest::keyClick(&field_, Qt::Key_Up);
    EXPECT_DOUBLE_EQ(*mm_, 961);
    QTest::keyClick(&field_, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(*mm_, 951);
    QTest::keyClick(&field_, Qt::Key_Up, Qt::AltModifier);
    EXPECT_NEAR(*mm_, 951.1, 1e-9);
    field_.setUnit(LengthUnit::inch);
    field_.setValueMm(254);
    QTest::keyClick(&field_, Qt::Key_Up);
    EXPECT_NEAR(*mm_, 255.5875, 1e-9);  // 10 1/16 in
    EXPECT_EQ(field_.text(), "10 1/16");
}

TEST_F(LengthFieldTest, steppingStartsFromTheGreyFigure) {
    field_.setSuggestionMm(905);
    EXPECT_EQ(field_.placeholderText(), "90.5");
    EXPECT_FALSE(field_.valueMm().has_value());
    QTest::keyClick(&field_, Qt::Key_Up);
    EXPECT_DOUBLE_EQ(*mm_, 906);
}

TEST_F(LengthFieldTest, aFieldForReadingsTakesNoStepFromNothing) {
    field_.setStepsWhenEmpty(false);
    field_.setSuggestionMm(905);
    for (const Qt::Key key : {Qt::Key_Up, Qt::Key_Down, Qt::Key_PageUp, Qt::Key_PageDown}) {
        QTest::keyClick(&field_, key);
    }
    EXPECT_EQ(edits_, 0);
    EXPECT_TRUE(field_.text().isEmpty());
    field_.setValueMm(900);
    QTest::keyClick(&field_, Qt::Key_Up);
    EXPECT_EQ(edits_, 1) << "a reading is stepped";
    EXPECT_GT(*mm_, 900);
}

TEST_F(LengthFieldTest, theOldFigureStandsBesideTheNewOneUntilForgotten) {
    field_.setValueMm(960);
    field_.clearFocus();
    field_.setFocus();
    type("94");
    ASSERT_TRUE(field_.oldFigureMm().has_value());
    EXPECT_DOUBLE_EQ(*field_.oldFigureMm(), 960);
    const QImage withOld = field_.grab().toImage();
    field_.forgetOldFigure();
    EXPECT_FALSE(field_.oldFigureMm().has_value());
    EXPECT_NE(field_.grab().toImage(), withOld) << "it can be seen";
}

TEST_F(LengthFieldTest, escapeGoesBackToWhatStoodThere) {
    field_.setValueMm(960);
    field_.clearFocus();
    field_.setFocus();
    type("81");
    QTest::keyClick(&field_, Qt::Key_Escape);
    EXPECT_EQ(field_.text(), "96");
    EXPECT_DOUBLE_EQ(*mm_, 960);
}

TEST_F(LengthFieldTest, undoIsLeftToTheWindow) {
    QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    undo.ignore();
    QApplication::sendEvent(&field_, &undo);
    EXPECT_FALSE(undo.isAccepted());
    QKeyEvent figure(QEvent::ShortcutOverride, Qt::Key_2, Qt::NoModifier, "2");
    figure.ignore();
    QApplication::sendEvent(&field_, &figure);
    EXPECT_TRUE(figure.isAccepted()) << "a figure typed into a field is no key of the window";
}

TEST_F(LengthFieldTest, writesTheDecimalMarkOfTheLanguage) {
    QLocale::setDefault(QLocale(QLocale::German));
    field_.setValueMm(325);
    EXPECT_EQ(field_.text(), "32,5");
    QLocale::setDefault(QLocale::c());
}

}  // namespace
}  // namespace coutil
