#pragma once

#include <QDate>
#include <QPointer>
#include <functional>
#include <memory>
#include <optional>

#include "core/sheets/sheet_drawing.h"
#include "ui/benches/table_bench.h"
#include "ui/canvas/table.h"
#include "ui/comparing/compared_places.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace coutil {

class CompareChart;
class CompareChoices;
class CompareTable;
class FoldOut;
struct ComparePaper;

// Two revisions or pencils, or the two sides of one: over each other or one over the other with one
// view, their figures and the girth chart. Begins with what is shown and its parent.
class CompareBench : public TableBench {
    Q_OBJECT

  public:
    CompareBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);
    ~CompareBench() override;

    [[nodiscard]] QString benchName() const override;
    void enter() override;
    void leave() override;
    [[nodiscard]] QWidget* underTable() override;

    // Chooses both; shows them once the bench is entered.
    void compare(const StateRef& a, const StateRef& b);
    // nullptr while there is nothing to compare.
    [[nodiscard]] std::shared_ptr<const ComparedStates> states();
    [[nodiscard]] Table& second() { return *second_; }  // B, side by side

    void exportPdf();
    void exportSvg();
    void print();
    [[nodiscard]] std::vector<SheetDrawing> pages();
    // Asks where to write; empty: nowhere. For tests, in place of the dialog.
    using AskPath = std::function<QString(QWidget* window, const QString& suggestion)>;
    void setAskPath(AskPath ask) { askPath_ = std::move(ask); }
    void setToday(const QDate& today) { today_ = today; }

  signals:
    void exported(const QString& path);
    // B is on the table; what changed since A is wanted for a paper master.
    void changeSheetWanted(const coutil::StateRef& older);

  protected:
    void showCard() override;
    [[nodiscard]] TableScene sceneNow() override;
    void forgetOld() override;

  private:
    void buildCard();
    void buildButtons(QVBoxLayout* column);
    void linkTables();
    void compareAnew();
    void showBoth();
    void turnWhereLarger();
    [[nodiscard]] bool isLargerBeside() const;
    void showFigures();
    [[nodiscard]] QString emptyText();
    [[nodiscard]] QString noDifferenceText();
    [[nodiscard]] QDate today() const;
    [[nodiscard]] ComparePaper paper();
    [[nodiscard]] QString askWhere(const QString& ending);
    void tellWritten(const QString& path, const std::vector<Problem>& problems);
    [[nodiscard]] bool hasChangeSheet();
    void askChangeSheet();
    void light(const ComparedPlace& place);
    void goTo(const ComparedPlace& place);
    void lightHeight(std::optional<double> heightMm);

    CompareChoices* choices_;
    QLabel* words_;
    CompareChart* chart_;
    QVBoxLayout* tables_;
    QLabel* alterations_;
    QPushButton* pdf_;
    QPushButton* svg_;
    QPushButton* print_;
    QPushButton* changeSheet_;
    std::vector<FoldOut*> folds_;
    std::vector<CompareTable*> figures_;
    QPointer<Table> second_;  // the window's, once it was laid out
    std::shared_ptr<const ComparedStates> states_;
    ComparedLayout layout_;
    bool isStale_ = true;
    bool isBeside_ = false;  // side by side: the second table to the right, not under the first
    AskPath askPath_;
    std::optional<QDate> today_;
};

}  // namespace coutil
