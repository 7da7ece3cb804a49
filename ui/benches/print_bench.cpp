#include "ui/benches/print_bench.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>

#include "ui/benches/correction_part.h"
#include "ui/benches/job_bar.h"
#include "ui/benches/paper_part.h"
#include "ui/benches/plan_search.h"
#include "ui/benches/print_settings.h"
#include "ui/benches/sheet_job.h"
#include "ui/benches/sheet_map.h"
#include "ui/benches/sheet_plan_scene.h"
#include "ui/benches/shown_title.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/window/settings.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/sheet_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

PrintBench::PrintBench(FolioDocument& document, Table& table, QWidget* parent)
    : TableBench(document, table, parent),
      settings_(openSettings()),
      options_(storedSheetOptions(*settings_)),
      search_(new PlanSearch(this)),
      job_(new SheetJob(this)) {
    buildCard();
    connect(&document, &FolioDocument::opened, this, [this] { openPage(-1); });
    connect(search_, &PlanSearch::found, this, &PrintBench::takeBetter);
    connect(search_, &PlanSearch::foundNothing, this, [this] {
        searchBar_->end();
        emit searchEnded();
    });
    connect(search_, &PlanSearch::progressed, this, [this](double done, int sheets) {
        searchBar_->show(done, tr("Looking for fewer sheets: %n so far", nullptr, sheets));
    });
}

PrintBench::~PrintBench() = default;

QString PrintBench::benchName() const { return tr("Print"); }

bool PrintBench::isSearching() const { return search_->isRunning(); }

void PrintBench::enter() {
    page_ = -1;
    TableBench::enter();
    connect(&table(), &Table::clicked, this, [this](const TablePlace& place) {
        if (place.kind == TablePlace::Kind::sheet)
            openPage(pageOfSheet(*plan_, static_cast<std::size_t>(place.sheet)));
    });
    connect(&table(), &Table::activated, this, [this](const TablePlace& place) {
        if (place.kind == TablePlace::Kind::sheet)
            openPage(pageOfSheet(*plan_, static_cast<std::size_t>(place.sheet)));
    });
    connect(&table(), &Table::letGo, this, [this] { openPage(-1); });
}

void PrintBench::leave() {
    table().disconnect(this);
    TableBench::leave();
}

void PrintBench::showCard() {
    const LengthUnit unit = document().folio().unit;
    paper_->showOptions(options_, unit);
    correction_->showCorrection(options_.paper, {options_.scaleX, options_.scaleY}, unit);
    table().setFaded(!document().drafted().tracings);
    showPlanWords();
}

void PrintBench::forgetOld() {
    isPlanCurrent_ = false;
    search_->cancel();
    searchBar_->end();
}

// The plan is made when the table needs it and the old one is out of date.
TableScene PrintBench::sceneNow() {
    if (!isPlanCurrent_) planAgain();
    const LengthUnit unit = document().folio().unit;
    TableScene scene;
    if (plan_ && page_ >= 0) {
        const std::vector<SheetDrawing> pages = drawings();
        scene = sheetPageScene(pages.at(static_cast<std::size_t>(page_)), unit);
    } else if (plan_) {
        scene = sheetPlanScene(*plan_, *document().drafted().tracings, unit);
        scene.caption = shownName(document());
    }
    scene.unit = unit;
    scene.emptyText =
        planProblems_.empty() ? nothingYet() : problemSentence(planProblems_.front(), unit);
    return scene;
}

void PrintBench::planAgain() {
    isPlanCurrent_ = true;
    search_->cancel();
    searchBar_->end();
    plan_.reset();
    planProblems_.clear();
    const auto& tracings = document().drafted().tracings;
    if (tracings) {
        Outcome<SheetPlan> outcome = planSheets(*tracings, options_);
        plan_ = std::move(outcome.value);
        planProblems_ = std::move(outcome.problems);
    }
    firstCount_ = plan_ ? plan_->sheets.size() : 0;
    map_->setPlan(plan_);
    page_ = std::min(page_, map_->pageCount() - 1);
    if (plan_) {
        searchBar_->begin(tr("Looking for fewer sheets"));
        search_->start(*tracings, options_);
    }
    emit planChanged();
}

// An arrangement that saves no sheet is not worth the pieces jumping about.
void PrintBench::takeBetter(const SheetPlan& plan) {
    searchBar_->end();
    if (plan_ && plan.sheets.size() < plan_->sheets.size()) {
        plan_ = plan;
        page_ = -1;
        map_->setPlan(plan_);
        map_->setPage(page_);
        emit planChanged();
        showSceneNow();
        if (isEntered()) table().fit();
        showPlanWords();
    }
    emit searchEnded();
}

void PrintBench::takeOptions(const SheetOptions& options) {
    const bool isOtherPaper = !(options.paper == options_.paper);
    options_ = options;
    if (isOtherPaper) {
        const Correction stored = storedCorrection(*settings_, options_.paper);
        options_.scaleX = stored.x;
        options_.scaleY = stored.y;
        if (!checkSheetOptions(options_).empty()) options_.scaleX = options_.scaleY = 1;
    }
    storeSheetOptions(*settings_, options_);
    isPlanCurrent_ = false;
    page_ = -1;
    map_->setPage(page_);
    followNow();
    if (isEntered()) table().fit();
}

void PrintBench::openPage(int page) {
    if (page == page_ || page >= map_->pageCount()) return;
    page_ = page;
    map_->setPage(page);
    if (!isEntered()) return;
    showSceneNow();
    table().fit();
    showPlanWords();
}

void PrintBench::showPlanWords() {
    const bool canPrint = plan_.has_value() && !job_->isRunning();
    for (QPushButton* button : {export_, print_, printFirst_}) button->setEnabled(canPrint);
    whole_->setEnabled(page_ >= 0);
    if (!plan_) {
        count_->setText(planProblems_.empty()
                            ? tr("No sheets: there is nothing to cut yet.")
                            : problemSentence(planProblems_.front(), document().folio().unit));
        pageWords_->clear();
        return;
    }
    const auto now = static_cast<int>(plan_->sheets.size());
    QString words = plan_->firstBlock ? tr("%n sheet(s) of %1", nullptr, now)
                                      : tr("%n sheet(s) of %1 and the first page", nullptr, now);
    words = words.arg(paperName(options_.paper));
    if (options_.paper.isOnePage) {
        const LengthUnit folioUnit = document().folio().unit;
        words = tr("One big page, %1 wide and %2 high")
                    .arg(lengthText(static_cast<double>(plan_->sheetWidthUm) / 1000, folioUnit),
                         lengthText(static_cast<double>(plan_->sheetHeightUm) / 1000, folioUnit));
    } else {
        words += plan_->isLandscape ? tr(", paper across") : tr(", paper upright");
    }
    if (plan_->sheets.size() < firstCount_) {
        words += tr("; %n saved by the search", nullptr,
                    static_cast<int>(firstCount_ - plan_->sheets.size()));
    }
    count_->setText(words + QLatin1Char('.'));
    pageWords_->setText(wordsOfPage());
}

QString PrintBench::wordsOfPage() const {
    if (page_ < 0) return tr("Click a sheet to see it as it will print.");
    const auto sheet = sheetOnPage(*plan_, page_);
    if (!sheet) return tr("First page, to be printed and measured alone.");
    const QString name = QString::fromStdString(nameOf(plan_->sheets[*sheet]));
    return page_ == 0 ? tr("Sheet %1, with the square to measure first.").arg(name)
                      : tr("Sheet %1.").arg(name);
}

}  // namespace coutil
