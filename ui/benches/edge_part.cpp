#include "ui/benches/edge_part.h"

#include <QFormLayout>
#include <QLabel>

#include "core/block/draft_corset.h"
#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/slider_length_field.h"

namespace coutil {

namespace {

constexpr double kHighestTopMm = 350;
constexpr double kLowestBottomMm = 300;

// One height of an edge that may stay open.
template <class EdgeStyle>
StyleFigure heightFigure(const QString& label, const QString& words, const QString& key,
                         double highestMm, EdgeStyle Style::*edge,
                         std::optional<double> EdgeStyle::*height) {
    return {.label = label,
            .words = words,
            .key = key,
            .lowestMm = 0,
            .highestMm = highestMm,
            .mayStayOpen = true,
            .read = [edge, height](const Style& s) { return s.*edge.*height; },
            .write = [edge, height](Style& s, std::optional<double> mm) { s.*edge.*height = mm; }};
}

ChoiceField* addShape(QFormLayout& form, const QString& words, const QString& objectName,
                      const QList<ChoiceField::Choice>& choices) {
    auto* field = new ChoiceField;
    field->setChoices(choices);
    field->setAccessibleName(words);
    field->setObjectName(objectName);
    auto* label = new QLabel(StylePart::tr("Shape"));
    label->setBuddy(field);
    form.addRow(label, field);
    return field;
}

}  // namespace

TopEdgePart::TopEdgePart(FolioDocument& document, QWidget* parent) : StylePart(document, parent) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    shape_ = addShape(*form, tr("Shape of the top edge"), QStringLiteral("topShape"),
                      {{tr("Straight"), int(TopShape::straight)},
                       {tr("Curved"), int(TopShape::curved)},
                       {tr("Sweetheart"), int(TopShape::sweetheart)},
                       {tr("Pointed"), int(TopShape::pointed)}});
    connect(shape_, &ChoiceField::chosen, this, [this](int shape) {
        edit([shape](Style& s) { s.topEdge.shape = TopShape(shape); }, tr("Top edge shape"));
    });
    const auto add = [&](const QString& label, const QString& words, const char* key,
                         std::optional<double> TopEdgeStyle::*height) {
        auto* slider = addSlider(*form, heightFigure(label, words, QLatin1String(key),
                                                     kHighestTopMm, &Style::topEdge, height));
        slider->setNames(words);
        slider->setObjectName(QLatin1String(key));
    };
    add(tr("Centre front"), tr("Top edge at the centre front"), "top_front",
        &TopEdgeStyle::frontMm);
    add(tr("Bust seam"), tr("Top edge at the bust seam"), "top_bust_seam",
        &TopEdgeStyle::bustSeamMm);
    add(tr("Side"), tr("Top edge at the side"), "top_side", &TopEdgeStyle::sideMm);
    add(tr("Centre back"), tr("Top edge at the centre back"), "top_back", &TopEdgeStyle::backMm);
}

BottomEdgePart::BottomEdgePart(FolioDocument& document, QWidget* parent)
    : StylePart(document, parent) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    shape_ = addShape(*form, tr("Shape of the bottom edge"), QStringLiteral("bottomShape"),
                      {{tr("Straight"), int(BottomShape::straight)},
                       {tr("Curved"), int(BottomShape::curved)},
                       {tr("Pointed"), int(BottomShape::pointed)},
                       {tr("Dipped over the hip"), int(BottomShape::dipped)}});
    connect(shape_, &ChoiceField::chosen, this, [this](int shape) {
        edit([shape](Style& s) { s.bottomEdge.shape = BottomShape(shape); },
             tr("Bottom edge shape"));
    });
    const auto add = [&](const QString& label, const QString& words, const char* key,
                         std::optional<double> BottomEdgeStyle::*height) {
        auto* slider = addSlider(*form, heightFigure(label, words, QLatin1String(key),
                                                     kLowestBottomMm, &Style::bottomEdge, height));
        slider->setNames(words);
        slider->setObjectName(QLatin1String(key));
    };
    add(tr("Centre front"), tr("Bottom edge at the centre front"), "bottom_front",
        &BottomEdgeStyle::frontMm);
    add(tr("Side"), tr("Bottom edge at the side"), "bottom_side", &BottomEdgeStyle::sideMm);
    add(tr("Centre back"), tr("Bottom edge at the centre back"), "bottom_back",
        &BottomEdgeStyle::backMm);
}

void TopEdgePart::refresh() {
    StylePart::refresh();
    shape_->setValue(int(style().topEdge.shape));
    const auto& body = document().drafted().body;
    if (!body) return;
    const ResolvedHeights heights = resolvedHeights(*body, style());
    const std::vector<double>& tops = heights.topMm;
    if (tops.size() < heights.sideSeam + 2) return;
    setSuggestion(0, tops.front());
    setSuggestion(1, tops[1]);  // the seam over the bust is the one between panels 1 and 2
    setSuggestion(2, tops[heights.sideSeam + 1]);
    setSuggestion(3, tops.back());
}

void BottomEdgePart::refresh() {
    StylePart::refresh();
    shape_->setValue(int(style().bottomEdge.shape));
    const auto& body = document().drafted().body;
    if (!body) return;
    const ResolvedHeights heights = resolvedHeights(*body, style());
    const std::vector<double>& bottoms = heights.bottomMm;
    if (bottoms.size() < heights.sideSeam + 2) return;
    setSuggestion(0, bottoms.front());
    setSuggestion(1, bottoms[heights.sideSeam + 1]);
    setSuggestion(2, bottoms.back());
}

}  // namespace coutil
