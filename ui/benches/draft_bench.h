#pragma once

#include <vector>

#include "ui/benches/bench.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

class EstimateList;
class FolioDocument;
class MorePart;
class PickedFigures;
class ProblemList;
class StylePart;
class Table;
struct Problem;

// The style beside the pattern it makes: every change redrafts at once. While body and style can't
// both be served, the last pattern stays on the table, pale, and the card says why.
class DraftBench : public Bench {
    Q_OBJECT

  public:
    DraftBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);

    [[nodiscard]] QString benchName() const override;
    void enter() override;
    void leave() override;

  private:
    void addPart(const QString& heading, StylePart* part);
    void showAll();
    void showOnTable();
    void showPicked();
    void pointAt(const Problem& problem);
    void goTo(const Problem& problem);

    FolioDocument& document_;
    Table& table_;
    std::vector<StylePart*> parts_;
    MorePart* more_;
    PickedFigures* picked_;
    ProblemList* problems_;
    EstimateList* estimates_;
    bool isEntered_ = false;
};

}  // namespace coutil
