#include "ui/benches/table_bench.h"

#include "ui/benches/problem_list.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"

namespace coutil {

TableBench::TableBench(FolioDocument& document, Table& table, QWidget* parent)
    : Bench(parent), document_(document), table_(table) {
    // Every change of the folio drafts anew, so this one signal tells all of them.
    connect(&document, &FolioDocument::draftedChanged, this, [this] {
        forgetOld();
        followNow();
    });
    connect(&document, &FolioDocument::opened, this, [this] {
        if (isEntered_) table_.fit();
    });
    connect(&table, &Table::pickedChanged, this, [this] {
        if (isEntered_) pickedChanged();
    });
}

void TableBench::enter() {
    isEntered_ = true;
    connect(&table_, &Table::hint, this, &Bench::hint, Qt::UniqueConnection);
    table_.pickPanel(-1);
    followNow();
    table_.fit();
}

void TableBench::leave() {
    isEntered_ = false;
    disconnect(&table_, &Table::hint, this, &Bench::hint);
    table_.pickPanel(-1);
    table_.setFaded(false);
    table_.lightProblem(-1, std::nullopt);
}

ProblemSpot TableBench::spotNow(const Problem&) const { return {}; }

QString TableBench::nothingYet() const {
    if (document_.garment() == nullptr) {
        return tr(
            "No garment on the table. Open the demo singer, start a new client or open a "
            "folio.");
    }
    return tr(
        "Nothing to draft yet. The Measure bench (key 1) asks for the measurements that are "
        "still missing.");
}

void TableBench::followNow() {
    if (!isEntered_) return;
    showSceneNow();
    showCard();
}

void TableBench::showSceneNow() {
    if (isEntered_) table_.setScene(sceneNow());
}

void TableBench::pointWith(ProblemList& list) {
    connect(&list, &ProblemList::pointed, this, &TableBench::light);
    connect(&list, &ProblemList::pointedAway, this, [this] {
        if (isEntered_) table_.lightProblem(-1, std::nullopt);
    });
    connect(&list, &ProblemList::chosen, this, &TableBench::goTo);
}

void TableBench::light(const Problem& problem) {
    if (!isEntered_) return;
    const ProblemSpot spot = spotNow(problem);
    table_.lightProblem(spot.panel, spot.atMm);
}

void TableBench::goTo(const Problem& problem) {
    if (!isEntered_) return;
    light(problem);
    const ProblemSpot spot = spotNow(problem);
    const auto panel = static_cast<std::size_t>(spot.panel);
    if (spot.atMm) {
        table_.centreOn(*spot.atMm);
    } else if (panel < table_.scene().panels.size()) {
        table_.centreOn(table_.scene().panels[panel].sewing.boundingRect().center());
    }
}

}  // namespace coutil
