#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>
#include <string>
#include <vector>

#include "core/alterations/mark.h"
#include "core/pattern/pattern.h"
#include "core/units/length.h"

class QFormLayout;

namespace coutil {

class ChoiceField;
class LengthField;

// Where a mark was read, as fields; which ones depends on the kind of place.
class FitPlaceFields : public QWidget {
    Q_OBJECT

  public:
    explicit FitPlaceFields(QWidget* parent = nullptr);

    void showPlace(const MarkPlace& place, const Pattern& pattern, LengthUnit unit);
    // The first figure to be typed; nullptr where there is none.
    [[nodiscard]] LengthField* firstFigure() const;

  signals:
    void edited(const coutil::MarkPlace& place, const QString& field);
    void left();

  private:
    struct Name {
        std::string key;
        bool isSeam = false;
        QString words;
    };
    void showNames(const std::vector<Name>& names, const QString& label, const Name& picked);
    void showFigures(const QString& label, std::optional<double> alongMm,
                     std::optional<double> lengthMm);
    void showEdge(std::optional<EdgeLine> line);
    void takeName(int index);
    void takeEdge(int line);
    void takeAlong(std::optional<double> mm);
    void takeLength(std::optional<double> mm);
    friend struct ShownPlace;

    MarkPlace place_;
    std::vector<Name> names_;
    QFormLayout* form_;
    ChoiceField* where_;
    ChoiceField* edge_;
    LengthField* along_;
    LengthField* length_;
};

}  // namespace coutil
