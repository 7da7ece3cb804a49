// Choices, dates, and a slider with its figure.
#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

#include "ui/fields/choice_field.h"
#include "ui/fields/date_field.h"
#include "ui/fields/slider_length_field.h"

namespace coutil {
namespace {

void turnWheel(QWidget& widget) {
    QWheelEvent wheel(QPointF(5, 5), widget.mapToGlobal(QPointF(5, 5)), {}, QPoint(0, -120),
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&widget, &wheel);
}

TEST(ChoiceField, tellsOnlyWhatTheMakerChose) {
    ChoiceField field;
    QSignalSpy chosen(&field, &ChoiceField::chosen);
    field.setChoices({{"busk", 7}, {"fold", 8}, {"seam", 9}});
    field.setValue(8);
    EXPECT_EQ(field.value(), 8);
    EXPECT_EQ(chosen.count(), 0);
    field.show();
    field.setFocus();
    QTest::keyClick(&field, Qt::Key_Down);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.first().first().toInt(), 9);
}

TEST(ChoiceField, aPassingWheelChangesNothing) {
    ChoiceField field;
    field.setChoices({{"busk", 0}, {"fold", 1}});
    field.setValue(0);
    field.show();
    field.clearFocus();
    turnWheel(field);
    EXPECT_EQ(field.value(), 0);
}

TEST(ChoiceField, keepsItsValueWhenTheChoicesComeAgain) {
    ChoiceField field;
    field.setChoices({{"busk", 0}, {"fold", 1}});
    field.setValue(1);
    field.setChoices({{"Schließe", 0}, {"Bruch", 1}, {"Naht", 2}});
    EXPECT_EQ(field.value(), 1);
    EXPECT_EQ(field.currentText(), "Bruch");
}

TEST(DateField, isIsoOutside) {
    DateField field;
    QSignalSpy edited(&field, &DateField::edited);
    field.setIsoDate("2026-03-02");
    EXPECT_EQ(field.isoDate(), "2026-03-02");
    field.setIsoDate("no date");
    EXPECT_EQ(field.isoDate(), "2026-03-02");
    EXPECT_EQ(edited.count(), 0);
    field.show();
    field.setFocus();
    QTest::keyClick(&field, Qt::Key_Up);
    EXPECT_EQ(edited.count(), 1);
    EXPECT_NE(field.isoDate(), "2026-03-02");
    EXPECT_TRUE(field.displayFormat().contains("yyyy")) << "bodies change over the years";
}

TEST(SliderLengthField, sliderAndFigureGoTogether) {
    SliderLengthField field;
    field.setRangeMm(-100, 100, 1);
    field.setValueMm(-60);
    EXPECT_EQ(field.slider().value(), 40);
    std::optional<double> told;
    QObject::connect(&field, &SliderLengthField::edited, &field,
                     [&told](std::optional<double> mm) { told = mm; });
    field.show();
    field.slider().setFocus();
    QTest::keyClick(&field.slider(), Qt::Key_Right);
    ASSERT_TRUE(told.has_value());
    EXPECT_DOUBLE_EQ(*told, -59);
    EXPECT_EQ(field.field().text(), "-5.9");
    field.field().setFocus();
    field.field().selectAll();
    QTest::keyClicks(&field.field(), "-3");
    EXPECT_DOUBLE_EQ(*told, -30);
    EXPECT_EQ(field.slider().value(), 70);
}

TEST(SliderLengthField, figuresBeyondTheSliderMayBeTyped) {
    SliderLengthField field;
    field.setRangeMm(0, 100, 1);
    field.show();
    field.field().setFocus();
    QTest::keyClicks(&field.field(), "15");
    EXPECT_DOUBLE_EQ(*field.valueMm(), 150);
    EXPECT_EQ(field.slider().value(), 100);
}

}  // namespace
}  // namespace coutil
