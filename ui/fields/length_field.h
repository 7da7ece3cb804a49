#pragma once

#include <functional>
#include <optional>

#include "core/problems/problem.h"
#include "core/units/length.h"
#include "ui/fields/text_field.h"

namespace coutil {

// A line for one length: any unit, fraction or sum may be typed; shown in the maker's unit. Up and
// down step by the shown unit (1 mm in cm, 1/16 in in inches; Shift ten times, Alt a tenth), Escape
// goes back to what stood there when the field was entered. A grey figure may stand in the empty
// field; the unit, and for a changed figure the old one, stand at its right end.
class LengthField : public TextField {
    Q_OBJECT

  public:
    explicit LengthField(QWidget* parent = nullptr);

    void setUnit(LengthUnit unit);
    [[nodiscard]] LengthUnit unit() const;
    // Without a sign only (the default lets any length in): a negative one is reported as
    // lengthNegative.
    void setMayBeNegative(bool mayBeNegative);
    // A length that `judge` has a problem with is refused like one that can't be read: the text
    // stays as typed, the value is again what it was when the field was entered, unreadable() tells
    // why.
    void setJudge(std::function<std::optional<Problem>(double mm)> judge);
    // For cells of a table whose heading names the unit: only a changed figure's old one stands at
    // the right end, in brackets.
    void setCompact(bool isCompact);
    void setValueMm(std::optional<double>
                        mm);  // does not signal; leaves the text alone while it means the same
    void setWrittenText(const QString& text, double mm);  // the maker's own text for a value
    void setSuggestionMm(std::optional<double> mm);       // grey figure of the empty field
    // Whether Up and Down make a value of an empty field, from its grey figure or from nothing (the
    // default). Not where a value is a reading: nobody measured a stepped estimate.
    void setStepsWhenEmpty(bool stepsWhenEmpty);
    [[nodiscard]] std::optional<double> valueMm() const;
    [[nodiscard]] bool isReadable() const;  // what stands there is taken as the value, or is empty

    // The figure that stood there before the last change, grey beside the new one until the maker's
    // next action; whoever sees that action calls forgetOldFigure().
    [[nodiscard]] std::optional<double> oldFigureMm() const;
    void forgetOldFigure();

    [[nodiscard]] QSize sizeHint() const override;

  signals:
    void edited(std::optional<double> mm,
                const QString& text);  // a readable value, or none for an empty field
    void unreadable(const coutil::Problem& problem);  // the text is no length, or a refused one

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void readText();
    void giveBackEntered();
    [[nodiscard]] std::optional<Problem> problemWith(double mm, const QString& typed) const;
    void step(double steps);
    void takeBack();
    void showValue();
    void showSuggestion();
    void leaveRoomForTail();
    [[nodiscard]] QString tail() const;
    [[nodiscard]] QString written(double mm) const;

    LengthUnit unit_ = LengthUnit::centimetre;
    bool mayBeNegative_ = true;
    std::function<std::optional<Problem>(double)> judge_;
    bool isReadable_ = true;
    bool isCompact_ = false;
    bool stepsWhenEmpty_ = true;
    std::optional<double> valueMm_;
    std::optional<double> suggestionMm_;
    std::optional<double> enteredMm_;
    QString enteredText_;
    std::optional<double> oldMm_;
};

}  // namespace coutil
