#include "ui/benches/draft_bench.h"

#include <QVBoxLayout>

#include "ui/benches/card_text.h"
#include "ui/benches/closure_part.h"
#include "ui/benches/edge_part.h"
#include "ui/benches/estimate_list.h"
#include "ui/benches/girth_table.h"
#include "ui/benches/more_part.h"
#include "ui/benches/pattern_scene.h"
#include "ui/benches/picked_figures.h"
#include "ui/benches/problem_list.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"

namespace coutil {

DraftBench::DraftBench(FolioDocument& document, Table& table, QWidget* parent)
    : Bench(parent),
      document_(document),
      table_(table),
      more_(new MorePart(document)),
      picked_(new PickedFigures),
      problems_(new ProblemList),
      estimates_(new EstimateList) {
    auto* column = new QVBoxLayout(this);
    column->setSpacing(4);
    column->addWidget(cardHeading(tr("Problems")));
    column->addWidget(problems_);
    addPart(tr("Panels and closures"), new ClosurePart(document));
    addPart(tr("Girths"), new GirthTable(document));
    addPart(tr("Top edge, up from the waist"), new TopEdgePart(document));
    addPart(tr("Bottom edge, down from the waist"), new BottomEdgePart(document));
    column->addWidget(picked_);
    column->addWidget(cardHeading(tr("Estimates")));
    column->addWidget(estimates_);
    column->addWidget(more_);
    column->addStretch(1);
    connect(&document, &FolioDocument::draftedChanged, this, &DraftBench::showAll);
    connect(&document, &FolioDocument::folioChanged, this, &DraftBench::showAll);
    connect(&document, &FolioDocument::opened, this, &DraftBench::showAll);
    connect(&table, &Table::pickedChanged, this, &DraftBench::showPicked);
    connect(problems_, &ProblemList::pointed, this, &DraftBench::pointAt);
    connect(problems_, &ProblemList::pointedAway, this,
            [this] { table_.lightProblem(-1, std::nullopt); });
    connect(problems_, &ProblemList::chosen, this, &DraftBench::goTo);
    showAll();
}

QString DraftBench::benchName() const { return tr("Draft"); }

void DraftBench::addPart(const QString& heading, StylePart* part) {
    layout()->addWidget(cardHeading(heading));
    layout()->addWidget(part);
    parts_.push_back(part);
}

void DraftBench::enter() {
    isEntered_ = true;
    connect(&table_, &Table::hint, this, &Bench::hint, Qt::UniqueConnection);
    showAll();
    table_.fit();
}

void DraftBench::leave() {
    isEntered_ = false;
    disconnect(&table_, &Table::hint, this, &Bench::hint);
    table_.setFaded(false);
    table_.lightProblem(-1, std::nullopt);
}

// A bench that is not entered costs nothing; it catches up when it is.
void DraftBench::showAll() {
    if (!isEntered_) return;
    const LengthUnit unit = document_.folio().unit;
    for (StylePart* part : parts_) part->refresh();
    more_->refresh();
    problems_->showProblems(document_.drafted().problems, unit);
    const auto& body = document_.drafted().body;
    estimates_->showEstimates(body ? body->estimates : std::vector<Estimate>(), unit);
    showOnTable();
    showPicked();
}

void DraftBench::showOnTable() {
    const auto& pattern = document_.lastGoodDraft().pattern;
    TableScene scene;
    if (pattern) scene = patternScene(*pattern, document_.folio().unit);
    scene.unit = document_.folio().unit;
    scene.caption = tr("pencil");
    scene.emptyText =
        document_.garment() == nullptr
            ? tr("No garment on the table. Open the demo singer, start a new client or open a "
                 "folio.")
            : tr("Nothing to draft yet. The Measure bench (key 1) asks for the measurements that "
                 "are still missing.");
    table_.setScene(std::move(scene));
    table_.setFaded(!document_.drafted().pattern);
}

void DraftBench::showPicked() {
    if (!isEntered_) return;
    const auto& pattern = document_.lastGoodDraft().pattern;
    const int panel = table_.picked().panel;
    if (!pattern || panel < 0 || static_cast<std::size_t>(panel) >= pattern->panels.size()) {
        picked_->showNothing();
        return;
    }
    picked_->showPanel(pattern->panels[static_cast<std::size_t>(panel)], document_.folio().unit);
}

void DraftBench::pointAt(const Problem& problem) {
    const auto& pattern = document_.lastGoodDraft().pattern;
    if (!isEntered_ || !pattern) return;
    const ProblemSpot spot = spotOf(problem, *pattern);
    table_.lightProblem(spot.panel, spot.atMm);
}

void DraftBench::goTo(const Problem& problem) {
    const auto& pattern = document_.lastGoodDraft().pattern;
    if (!isEntered_ || !pattern) return;
    const ProblemSpot spot = spotOf(problem, *pattern);
    pointAt(problem);
    if (spot.atMm) {
        table_.centreOn(*spot.atMm);
    } else if (spot.panel >= 0) {
        const auto& panel = table_.scene().panels[static_cast<std::size_t>(spot.panel)];
        table_.centreOn(panel.sewing.boundingRect().center());
    }
}

}  // namespace coutil
