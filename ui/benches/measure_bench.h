#pragma once

#include <optional>
#include <vector>

#include "core/measurements/measurement.h"
#include "ui/benches/bench.h"

class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace coutil {

class FolioDocument;
class MeasureHead;
class MeasurementRow;
class Table;
class TapeFigure;

// Where measurements are typed. The card lists every measurement of the catalogue with what is
// wrong with it or what it is estimated from; at its foot stands how to take the one in hand, with
// the tape drawn on a body. The table shows the panels that follow, or the body while nothing can
// be drafted yet.
class MeasureBench : public Bench {
    Q_OBJECT

  public:
    MeasureBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);

    [[nodiscard]] QString benchName() const override;
    void enter() override;
    void leave() override;
    [[nodiscard]] bool scrollsItself() const override { return true; }

    [[nodiscard]] MeasurementRow& row(Measurement id);
    [[nodiscard]] TapeFigure& figure() { return *figure_; }

  private:
    [[nodiscard]] QWidget* buildRows();
    [[nodiscard]] QWidget* buildHelp();
    void addGroup(QVBoxLayout& column, const QString& title, const std::vector<Measurement>& ids);
    void connectRow(MeasurementRow* row);
    void refresh();
    void showFindings();
    void showTable();
    void take(Measurement id, std::optional<double> mm, const QString& text);
    void showHelp(Measurement id);
    void goOn(Measurement id);

    FolioDocument& document_;
    Table& table_;
    QScrollArea* scroll_;
    MeasureHead* head_;
    std::vector<MeasurementRow*> rows_;
    TapeFigure* figure_;
    QLabel* helpTerm_;
    QLabel* helpHow_;
    QLabel* helpRange_;
    std::optional<Measurement> helped_;
    std::optional<Measurement> edited_;  // the row whose change is being taken
    bool isEntered_ = false;
};

}  // namespace coutil
