#pragma once

#include <vector>

#include "ui/benches/table_bench.h"

namespace coutil {

class EstimateList;
class MorePart;
class PickedFigures;
class StylePart;

// The style beside the pattern it makes: every change redrafts at once. While body and style can't
// both be served, the last pattern stays on the table, pale, and the card says why.
class DraftBench : public TableBench {
    Q_OBJECT

  public:
    DraftBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);

    [[nodiscard]] QString benchName() const override;

  protected:
    void showCard() override;
    [[nodiscard]] TableScene sceneNow() override;
    [[nodiscard]] ProblemSpot spotNow(const Problem& problem) const override;
    void pickedChanged() override;

  private:
    void addPart(const QString& heading, StylePart* part);

    std::vector<StylePart*> parts_;
    MorePart* more_;
    PickedFigures* picked_;
    ProblemList* problems_;
    EstimateList* estimates_;
};

}  // namespace coutil
