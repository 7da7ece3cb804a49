#include "ui/benches/closure_part.h"

#include <QFormLayout>
#include <QLabel>

#include "ui/fields/choice_field.h"
#include "ui/fields/slider_length_field.h"

namespace coutil {

namespace {

constexpr int kFewestPanels = 4;
constexpr int kMostPanels = 7;

void addChoice(QFormLayout& form, const QString& words, ChoiceField& field) {
    auto* label = new QLabel(words);
    label->setBuddy(&field);
    field.setAccessibleName(words);
    form.addRow(label, &field);
}

}  // namespace

ClosurePart::ClosurePart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent), panels_(new ChoiceField), front_(new ChoiceField) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    QList<ChoiceField::Choice> counts;
    for (int count = kFewestPanels; count <= kMostPanels; ++count) {
        counts.append({tr("%1, %2 in all").arg(count).arg(2 * count), count});
    }
    panels_->setChoices(counts);
    panels_->setObjectName(QStringLiteral("panelsPerHalf"));
    addChoice(*form, tr("Panels a half"), *panels_);
    front_->setChoices({{tr("Busk"), int(FrontClosure::busk)},
                        {tr("On the fold"), int(FrontClosure::fold)},
                        {tr("Seam"), int(FrontClosure::seam)}});
    front_->setObjectName(QStringLiteral("frontClosure"));
    addChoice(*form, tr("Centre front"), *front_);
    addSlider(*form, {.label = tr("Lacing gap"),
                      .words = tr("Lacing gap"),
                      .key = QStringLiteral("lacing_gap"),
                      .lowestMm = 0,
                      .highestMm = 150,
                      .mayStayOpen = false,
                      .read = [](const Style& s) { return std::optional(s.lacingGapMm); },
                      .write = [](Style& s, std::optional<double> mm) { s.lacingGapMm = *mm; }})
        ->setObjectName(QStringLiteral("lacingGap"));
    connect(panels_, &ChoiceField::chosen, this, [this](int count) {
        // What was said seam by seam or panel by panel has no meaning for another count.
        edit(
            [count](Style& s) {
                s.panelsPerHalf = count;
                s.panelShares.clear();
                s.seamShares.clear();
                s.frontPart.clear();
                s.topEdge.atSeamMm.clear();
                s.bottomEdge.atSeamMm.clear();
                s.allowance.byEdgeMm.clear();
            },
            tr("Number of panels"));
    });
    connect(front_, &ChoiceField::chosen, this, [this](int closure) {
        edit([closure](Style& s) { s.front = FrontClosure(closure); }, tr("Front closure"));
    });
}

void ClosurePart::refresh() {
    StylePart::refresh();
    panels_->setValue(style().panelsPerHalf);
    front_->setValue(int(style().front));
}

}  // namespace coutil
