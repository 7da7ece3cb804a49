#include "ui/benches/compare_bench.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "ui/benches/card_text.h"
#include "ui/benches/compare_chart.h"
#include "ui/benches/compare_choices.h"
#include "ui/benches/compare_scene.h"
#include "ui/benches/compare_table.h"
#include "ui/benches/fold_out.h"
#include "ui/canvas/table.h"
#include "ui/comparing/compared_figures.h"
#include "ui/document/folio_document.h"

namespace coutil {

namespace {
constexpr std::size_t kTables = 5;
constexpr std::size_t kOpenTables = 2;
}  // namespace

CompareBench::CompareBench(FolioDocument& document, Table& table, QWidget* parent)
    : TableBench(document, table, parent),
      choices_(new CompareChoices(document)),
      words_(quietText()),
      chart_(new CompareChart),
      tables_(new QVBoxLayout),
      alterations_(new QLabel),
      pdf_(new QPushButton(tr("Save as PDF…"))),
      svg_(new QPushButton(tr("Save as SVG…"))),
      print_(new QPushButton(tr("Print…"))),
      changeSheet_(new QPushButton(tr("Change sheet…"))),
      second_(new Table) {
    buildCard();
    linkTables();
    connect(choices_, &CompareChoices::chosen, this, &CompareBench::compareAnew);
    connect(choices_, &CompareChoices::viewChosen, this, &CompareBench::showBoth);
    connect(chart_, &CompareChart::heightRead, this, &CompareBench::lightHeight);
    connect(pdf_, &QPushButton::clicked, this, &CompareBench::exportPdf);
    connect(svg_, &QPushButton::clicked, this, &CompareBench::exportSvg);
    connect(print_, &QPushButton::clicked, this, &CompareBench::print);
    connect(changeSheet_, &QPushButton::clicked, this, &CompareBench::askChangeSheet);
    connect(&document, &FolioDocument::shownChanged, this, [this] {
        choices_->refresh();
        choices_->chooseShown();
        isStale_ = true;
        followNow();
    });
}

// What loses pointer or keyboard because the window goes must not speak to a bench half gone.
CompareBench::~CompareBench() {
    chart_->disconnect(this);
    for (CompareTable* figures : figures_) figures->disconnect(this);
    if (second_ && second_->parent() == nullptr) delete second_;
}

QString CompareBench::benchName() const { return tr("Compare"); }

void CompareBench::buildCard() {
    auto* column = new QVBoxLayout(this);
    column->setSpacing(4);
    column->addWidget(choices_);
    column->addWidget(words_);
    column->addWidget(cardHeading(tr("Girth against height")));
    column->addWidget(chart_);
    column->addLayout(tables_);
    tables_->setSpacing(2);
    for (std::size_t i = 0; i < kTables; ++i) {
        FoldOut* fold = folds_.emplace_back(new FoldOut(QString()));
        CompareTable* figures = figures_.emplace_back(new CompareTable);
        figures->setObjectName(QStringLiteral("figures%1").arg(i));
        fold->addContent(figures);
        fold->setOpen(i < kOpenTables);
        tables_->addWidget(fold);
        connect(figures, &CompareTable::pointed, this, &CompareBench::light);
        connect(figures, &CompareTable::chosen, this, &CompareBench::goTo);
    }
    column->addWidget(cardHeading(tr("Altered between the two")));
    alterations_->setObjectName(QStringLiteral("alterationsBetween"));
    alterations_->setWordWrap(true);
    alterations_->setTextFormat(Qt::PlainText);
    column->addWidget(alterations_);
    buildButtons(column);
    column->addStretch(1);
}

void CompareBench::buildButtons(QVBoxLayout* column) {
    pdf_->setObjectName(QStringLiteral("comparePdf"));
    svg_->setObjectName(QStringLiteral("compareSvg"));
    print_->setObjectName(QStringLiteral("comparePrint"));
    changeSheet_->setObjectName(QStringLiteral("compareChangeSheet"));
    changeSheet_->setToolTip(
        tr("Only what changed from A to B, true to scale, to redraw a pattern that was printed."));
    auto* grid = new QGridLayout;
    grid->addWidget(pdf_, 0, 0);
    grid->addWidget(svg_, 0, 1);
    grid->addWidget(print_, 1, 0);
    grid->addWidget(changeSheet_, 1, 1);
    column->addLayout(grid);
}

// Both tables are of one size and have their panels at the same places: one view is enough.
void CompareBench::linkTables() {
    second_->setObjectName(QStringLiteral("secondTable"));
    second_->hide();
    connect(&table(), &Table::viewChanged, this, [this] {
        if (!second_->isHidden()) second_->setView(table().view());
    });
    connect(second_, &Table::viewChanged, this, [this] {
        if (isEntered() && !second_->isHidden()) table().setView(second_->view());
    });
    connect(second_, &Table::hint, this, &Bench::hint);
    connect(&table(), &Table::resized, this, &CompareBench::turnWhereLarger, Qt::QueuedConnection);
}

QWidget* CompareBench::underTable() { return second_; }

void CompareBench::enter() {
    choices_->refresh();
    TableBench::enter();
    showBoth();
    table().fit();
}

void CompareBench::leave() {
    second_->hide();
    TableBench::leave();
}

void CompareBench::forgetOld() { isStale_ = true; }

void CompareBench::compare(const StateRef& a, const StateRef& b) {
    choices_->refresh();
    choices_->choose(a, b);
}

void CompareBench::compareAnew() {
    isStale_ = true;
    followNow();
    if (isEntered()) table().fit();
}

std::shared_ptr<const ComparedStates> CompareBench::states() {
    if (!isStale_) return states_;
    isStale_ = false;
    const Folio& folio = document().folio();
    states_ = choices_->areSides() ? comparedSides(folio, choices_->b())
              : choices_->hasTwo() ? comparedStates(folio, choices_->a(), choices_->b())
                                   : nullptr;
    return states_;
}

QString CompareBench::emptyText() {
    if (document().garment() == nullptr) return nothingYet();
    if (!choices_->hasTwo() && !choices_->areSides()) {
        return tr(
            "One revision: nothing to compare yet. Fit it, confirm it, and what changed since "
            "then shows here. The two sides of one pattern can be compared already.");
    }
    return nothingYet();
}

TableScene CompareBench::sceneNow() {
    const LengthUnit unit = document().folio().unit;
    const auto now = states();
    if (!now) {
        TableScene scene;
        scene.unit = unit;
        scene.emptyText = emptyText();
        return scene;
    }
    layout_ = comparedLayout(*now, choices_->factor());
    return choices_->isSideBySide() ? singleScene(*now, layout_, ComparedOne::a, unit)
                                    : overlaidScene(*now, layout_, choices_->factor(), unit);
}

// Whether two tables to the left and right would show everything larger than one over the other.
bool CompareBench::isLargerBeside() const {
    const bool hasTwo = !second_->isHidden();
    const double wide = table().width() + (hasTwo && isBeside_ ? second_->width() : 0);
    const double high = table().height() + (hasTwo && !isBeside_ ? second_->height() : 0);
    const double boxWide = layout_.box.widthMm();
    const double boxHigh = layout_.box.heightMm();
    return std::min(wide / 2 / boxWide, high / boxHigh) >
           std::min(wide / boxWide, high / 2 / boxHigh);
}

// The window may have become wide or high: the tables turn with it. Where both ways show as much,
// they stay.
void CompareBench::turnWhereLarger() {
    if (!isEntered() || !states() || !choices_->isSideBySide()) return;
    const bool isBeside = isLargerBeside();
    if (std::exchange(isBeside_, isBeside) != isBeside) emit besideTableWanted(isBeside);
}

void CompareBench::showBoth() {
    if (!isEntered()) return;
    showSceneNow();
    const bool hasSecond = states() && choices_->isSideBySide();
    if (hasSecond) {
        second_->setScene(singleScene(*states_, layout_, ComparedOne::b, document().folio().unit));
        turnWhereLarger();
    }
    if (second_->isHidden() != hasSecond) return;
    second_->setVisible(hasSecond);
    table().fit();
}

QString CompareBench::noDifferenceText() {
    const auto now = states();
    if (!now) return emptyText();
    const auto tables = comparedFigures(*now, document().folio().unit);
    const bool isSame = std::ranges::all_of(tables, [](const FigureTable& table) {
        return std::ranges::all_of(table.rows, &FigureRow::isUnchanged);
    });
    if (!isSame) return {};
    return now->areSides ? tr("Left and right are the same.") : tr("Both are the same.");
}

void CompareBench::showCard() {
    choices_->refresh();
    const auto now = states();
    const QString words = noDifferenceText();
    words_->setText(words);
    words_->setVisible(!words.isEmpty());
    chart_->showStates(now, document().folio().unit);
    chart_->setVisible(now != nullptr);
    for (QPushButton* button : {pdf_, svg_, print_}) button->setEnabled(now != nullptr);
    changeSheet_->setEnabled(hasChangeSheet());
    showFigures();
    showBoth();
}

void CompareBench::showFigures() {
    const auto now = states();
    const LengthUnit unit = document().folio().unit;
    const auto tables = now ? comparedFigures(*now, unit) : std::vector<FigureTable>();
    for (std::size_t i = 0; i < kTables; ++i) {
        folds_[i]->setVisible(i < tables.size());
        if (i >= tables.size()) continue;
        folds_[i]->button().setText(tables[i].title);
        figures_[i]->showFigures(tables[i]);
    }
    const QStringList told = now ? alterationsTold(document().folio(), *now, unit) : QStringList();
    alterations_->setText(told.isEmpty() ? tr("nothing") : told.join(QLatin1Char('\n')));
}

void CompareBench::light(const ComparedPlace& place) {
    if (!isEntered()) return;
    const auto spot = spotOf(place, layout_);
    table().lightProblem(place.pair, spot);
    if (!second_->isHidden()) second_->lightProblem(place.pair, spot);
}

void CompareBench::goTo(const ComparedPlace& place) {
    if (!isEntered()) return;
    light(place);
    if (const auto spot = spotOf(place, layout_)) table().centreOn(*spot);
}

void CompareBench::lightHeight(std::optional<double> heightMm) {
    if (!isEntered()) return;
    ComparedPlace place;
    if (heightMm && states_ && !states_->comparison.panels.empty()) {
        const Panel& panel = panelShown(*states_, states_->comparison.panels.front());
        place.at = Point((panel.grain[0].x() + panel.grain[1].x()) / 2, *heightMm);
        place.pair = 0;
    }
    const auto spot = spotOf(place, layout_);
    table().lightProblem(-1, spot);
    if (!second_->isHidden()) second_->lightProblem(-1, spot);
}

}  // namespace coutil
