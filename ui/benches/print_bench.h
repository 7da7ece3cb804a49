#pragma once

#include <QDate>
#include <QSettings>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "core/sheets/sheet_drawing.h"
#include "core/sheets/sheet_plan.h"
#include "ui/benches/table_bench.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace coutil {

class CorrectionPart;
class JobBar;
class PaperPart;
class PlanSearch;
class SheetJob;
class SheetMap;

// The sheets as they will be printed: the drawing with its grid on the table, one page large when
// it is chosen, paper and corrections in the card. A plan at once, a better one when a search of a
// few seconds has found it.
class PrintBench : public TableBench {
    Q_OBJECT

  public:
    // Asks for the file to write; gets a suggestion, gives an empty name when the maker thought
    // better of it. The real one is a dialog; tests answer themselves.
    using AskPath = std::function<QString(QWidget* window, const QString& suggestion)>;

    PrintBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);
    ~PrintBench() override;

    [[nodiscard]] QString benchName() const override;
    void enter() override;
    void leave() override;

    void setAskPath(AskPath askPath) { askPath_ = std::move(askPath); }
    void setToday(const QDate& today) { today_ = today; }  // printed on the sheets

    [[nodiscard]] const std::optional<SheetPlan>& plan() const { return plan_; }
    [[nodiscard]] bool isSearching() const;
    // What the buttons of the card do; nothing while there is no plan or a job is running.
    void exportPdf();
    void print(bool firstPageOnly);
    void openPage(int page);  // -1: the whole drawing, 0: the first page, then the plan's sheets

  signals:
    void planChanged();  // plan() is new
    void searchEnded();  // the better plan arrived, or there was none
    void exported(const QString& path);

  protected:
    void showCard() override;
    [[nodiscard]] TableScene sceneNow() override;
    void forgetOld() override;

  private:
    void buildCard();
    void planAgain();
    void takeBetter(const SheetPlan& plan);
    void takeOptions(const SheetOptions& options);
    [[nodiscard]] std::vector<SheetDrawing> drawings() const;
    void tellEnd(const Problem* problem, bool wasStopped);
    [[nodiscard]] QString wordsOfPage() const;
    void showPlanWords();

    std::unique_ptr<QSettings> settings_;
    SheetOptions options_;
    std::optional<SheetPlan> plan_;
    std::vector<Problem> planProblems_;
    std::size_t firstCount_ = 0;  // sheets of the plan made at once
    int page_ = -1;
    bool isPlanCurrent_ = false;
    AskPath askPath_;
    std::optional<QDate> today_;
    QString exportPath_;

    PaperPart* paper_;
    CorrectionPart* correction_;
    QCheckBox* client_;
    SheetMap* map_;
    QLabel* count_;
    QLabel* pageWords_;
    QPushButton* whole_;
    JobBar* searchBar_;
    JobBar* jobBar_;
    QPushButton* export_;
    QPushButton* print_;
    QPushButton* printFirst_;
    PlanSearch* search_;
    SheetJob* job_;
};

}  // namespace coutil
