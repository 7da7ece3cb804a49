#pragma once

#include <QSlider>
#include <QWidget>
#include <optional>

#include "ui/fields/length_field.h"

namespace coutil {

// A slider and the figure it stands at. The slider runs over the usual values in whole steps; the
// figure may be typed beyond them.
class SliderLengthField : public QWidget {
    Q_OBJECT

  public:
    explicit SliderLengthField(QWidget* parent = nullptr);

    void setRangeMm(double lowestMm, double highestMm, double stepMm);
    void setUnit(LengthUnit unit);
    void setValueMm(std::optional<double> mm);  // does not signal
    void setSuggestionMm(std::optional<double> mm);
    void setNames(const QString& name);  // accessible names of both halves
    [[nodiscard]] std::optional<double> valueMm() const;
    [[nodiscard]] LengthField& field();
    [[nodiscard]] QSlider& slider();

  signals:
    void edited(std::optional<double> mm, const QString& text);  // typed or dragged
    void unreadable(const coutil::Problem& problem);
    void left();  // done: slider let go, Enter, Tab; a good place to end a merge run

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void dragged(int steps);
    void placeSlider();

    QSlider* slider_;
    LengthField* field_;
    double lowestMm_ = 0;
    double stepMm_ = 1;
    std::optional<double> suggestionMm_;
};

}  // namespace coutil
