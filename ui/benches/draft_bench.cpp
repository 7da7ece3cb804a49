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
#include "ui/benches/shown_title.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"

namespace coutil {

DraftBench::DraftBench(FolioDocument& document, Table& table, QWidget* parent)
    : TableBench(document, table, parent),
      more_(new MorePart(document)),
      picked_(new PickedFigures),
      problems_(new ProblemList),
      estimates_(new EstimateList) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kCardMarginPx, 0, kCardMarginPx, kCardMarginPx);
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
    pointWith(*problems_);
}

QString DraftBench::benchName() const { return tr("Draft"); }

void DraftBench::addPart(const QString& heading, StylePart* part) {
    layout()->addWidget(cardHeading(heading));
    layout()->addWidget(part);
    parts_.push_back(part);
}

void DraftBench::showCard() {
    const LengthUnit unit = document().folio().unit;
    for (StylePart* part : parts_) part->refresh();
    more_->refresh();
    problems_->showProblems(document().drafted().problems, unit);
    const auto& body = document().drafted().body;
    estimates_->showEstimates(body ? body->estimates : std::vector<Estimate>(), unit);
    table().setFaded(!document().drafted().pattern);
    pickedChanged();
}

TableScene DraftBench::sceneNow() {
    const auto& pattern = document().lastGoodDraft().pattern;
    TableScene scene;
    if (pattern) scene = patternScene(*pattern, document().folio().unit);
    scene.unit = document().folio().unit;
    captionScene(scene, document());
    scene.emptyText = nothingYet();
    return scene;
}

ProblemSpot DraftBench::spotNow(const Problem& problem) const {
    const auto& pattern = document().lastGoodDraft().pattern;
    return pattern ? spotOf(problem, *pattern) : ProblemSpot{};
}

void DraftBench::pickedChanged() {
    const auto& pattern = document().lastGoodDraft().pattern;
    const auto panel = static_cast<std::size_t>(table().picked().panel);
    if (!pattern || panel >= pattern->panels.size()) {
        picked_->showNothing();
    } else {
        picked_->showPanel(pattern->panels[panel], document().folio().unit);
    }
}

}  // namespace coutil
