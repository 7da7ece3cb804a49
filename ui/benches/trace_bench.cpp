#include "ui/benches/trace_bench.h"

#include <QVBoxLayout>

#include "core/pattern/panel_key.h"
#include "ui/benches/allowance_part.h"
#include "ui/benches/card_text.h"
#include "ui/benches/cut_list.h"
#include "ui/benches/problem_list.h"
#include "ui/benches/projector_part.h"
#include "ui/benches/shown_title.h"
#include "ui/benches/tracing_scene.h"
#include "ui/canvas/painter_path.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"

namespace coutil {

TraceBench::TraceBench(FolioDocument& document, Table& table, QWidget* parent)
    : TableBench(document, table, parent),
      allowances_(new AllowancePart(document)),
      edges_(new EdgeAllowancePart(document)),
      cuts_(new CutList),
      projector_(new ProjectorPart),
      problems_(new ProblemList) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kCardMarginPx, 0, kCardMarginPx, kCardMarginPx);
    column->setSpacing(4);
    column->addWidget(cardHeading(tr("Problems")));
    column->addWidget(problems_);
    column->addWidget(cardHeading(tr("Allowances")));
    column->addWidget(allowances_);
    column->addWidget(edges_);
    column->addWidget(cardHeading(tr("To cut")));
    column->addWidget(cuts_);
    column->addWidget(cardHeading(tr("On the cutting table")));
    column->addWidget(projector_);
    column->addStretch(1);
    pointWith(*problems_);
    connect(projector_, &ProjectorPart::projectorWanted, this, &TraceBench::projectorWanted);
}

QString TraceBench::benchName() const { return tr("Trace"); }

void TraceBench::showCard() {
    allowances_->refresh();
    edges_->refresh();
    const auto& tracings = document().lastGoodDraft().tracings;
    cuts_->showTracings(tracings ? *tracings : std::vector<Tracing>());
    problems_->showProblems(document().drafted().problems, document().folio().unit);
    projector_->refresh(document().drafted().tracings.has_value());
    table().setFaded(!document().drafted().tracings);
}

TableScene TraceBench::sceneNow() {
    const auto& tracings = document().lastGoodDraft().tracings;
    TableScene scene;
    if (tracings) scene = tracingScene(*tracings, document().folio().unit);
    scene.unit = document().folio().unit;
    captionScene(scene, document());
    scene.emptyText = nothingYet();
    return scene;
}

ProblemSpot TraceBench::spotNow(const Problem& problem) const {
    ProblemSpot spot;
    const auto& tracings = document().lastGoodDraft().tracings;
    if (!tracings) return spot;
    for (std::size_t i = 0; i < tracings->size(); ++i) {
        const Tracing& tracing = (*tracings)[i];
        if (panelKey(tracing.panel, tracing.side) != problem.panel) continue;
        spot.panel = static_cast<int>(i);
        if (problem.at) {
            spot.atMm = painterPoint(placed(*problem.at, tracingPlacements(*tracings)[i]));
        }
    }
    return spot;
}

void TraceBench::pickedChanged() { edges_->setPanel(table().picked().panel); }

}  // namespace coutil
