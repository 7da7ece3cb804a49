#pragma once

#include <QLineEdit>
#include <optional>

#include "core/problems/problem.h"
#include "core/units/length.h"

namespace coutil {

// A line for one length: any unit, fraction or sum may be typed; shown in the maker's unit. Up and
// down step by the shown unit (1 mm in cm, 1/16 in in inches; Shift ten times, Alt a tenth). A grey
// figure may stand in the empty field.
class LengthField : public QLineEdit {
    Q_OBJECT

  public:
    explicit LengthField(QWidget* parent = nullptr);

    void setUnit(LengthUnit unit);
    void setValueMm(std::optional<double>
                        mm);  // does not signal; leaves the text alone while it means the same
    void setWrittenText(const QString& text, double mm);  // the maker's own text for a value
    void setSuggestionMm(std::optional<double> mm);       // grey figure of the empty field
    [[nodiscard]] std::optional<double> valueMm() const;

  signals:
    void edited(std::optional<double> mm,
                const QString& text);  // a readable value, or none for an empty field
    void unreadable(const coutil::Problem& problem);  // the text does not read as a length (now)

  protected:
    void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace coutil
