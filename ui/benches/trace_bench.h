#pragma once

#include "ui/benches/table_bench.h"

namespace coutil {

class AllowancePart;
class CutList;
class EdgeAllowancePart;
class ProjectorPart;

// The pieces as they are cut: sewing and cutting lines, with the allowances that make the one from
// the other.
class TraceBench : public TableBench {
    Q_OBJECT

  public:
    TraceBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);

    [[nodiscard]] QString benchName() const override;

  signals:
    void projectorWanted();

  protected:
    void showCard() override;
    [[nodiscard]] TableScene sceneNow() override;
    [[nodiscard]] ProblemSpot spotNow(const Problem& problem) const override;
    void pickedChanged() override;

  private:
    AllowancePart* allowances_;
    EdgeAllowancePart* edges_;
    CutList* cuts_;
    ProjectorPart* projector_;
    ProblemList* problems_;
};

}  // namespace coutil
