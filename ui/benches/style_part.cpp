#include "ui/benches/style_part.h"

#include <QFormLayout>
#include <QLabel>
#include <utility>

#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/fields/slider_length_field.h"
#include "ui/words/problem_sentence.h"

namespace coutil {

namespace {

// What a slider moves by: a millimetre, or a sixteenth for those who measure in inches.
double sliderStepMm(LengthUnit unit) { return unit == LengthUnit::inch ? 25.4 / 16 : 1; }

QLabel* complaintLabel() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    label->setVisible(false);
    label->setObjectName(QStringLiteral("complaint"));
    return label;
}

}  // namespace

StylePart::StylePart(FolioDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {}

const Style& StylePart::style() const { return document_.style(); }

LengthUnit StylePart::unit() const { return document_.folio().unit; }

void StylePart::refresh() {
    isRefreshing_ = true;
    setEnabled(document_.garment() != nullptr);
    for (const Bound& bound : bound_) {
        const auto value = bound.figure.read(style());
        if (bound.slider != nullptr) {
            bound.slider->setUnit(unit());
            bound.slider->setRangeMm(bound.figure.lowestMm, bound.figure.highestMm,
                                     sliderStepMm(unit()));
            bound.slider->setValueMm(value);
        } else {
            bound.field->setUnit(unit());
            bound.field->setValueMm(value);
        }
        if (bound.field->isReadable() && bound.complaint != nullptr) bound.complaint->hide();
    }
    isRefreshing_ = false;
}

void StylePart::edit(const std::function<void(Style&)>& change, const QString& words,
                     const QString& key) {
    if (isRefreshing_ || document_.garment() == nullptr) return;
    Style changed = style();
    change(changed);
    document_.changeStyle(changed, words, key);
}

void StylePart::endRun() { document_.endMerging(); }

std::size_t StylePart::bind(const StyleFigure& figure, LengthField* field,
                            SliderLengthField* slider, QLabel* complaint) {
    const std::size_t index = bound_.size();
    bound_.push_back({figure, field, slider, complaint});
    connect(field, &LengthField::unreadable, this, [this, index](const Problem& problem) {
        complain(index, problemSentence(problem, unit()));
    });
    return index;
}

SliderLengthField* StylePart::addSlider(QFormLayout& form, const StyleFigure& figure) {
    auto* slider = new SliderLengthField;
    slider->setNames(figure.label);
    auto* complaint = complaintLabel();
    const std::size_t index = bind(figure, &slider->field(), slider, complaint);
    connect(slider, &SliderLengthField::edited, this,
            [this, index](std::optional<double> mm) { take(index, mm); });
    connect(slider, &SliderLengthField::left, this, [this, index] { finish(index); });
    auto* label = new QLabel(figure.label);
    label->setBuddy(&slider->field());
    form.addRow(label, slider);
    form.addRow(complaint);
    return slider;
}

LengthField* StylePart::makeField(const StyleFigure& figure) {
    auto* field = new LengthField;
    field->setAccessibleName(figure.label);
    const std::size_t index = bind(figure, field, nullptr, nullptr);
    connect(field, &LengthField::edited, this,
            [this, index](std::optional<double> mm) { take(index, mm); });
    connect(field, &LengthField::left, this, [this, index] { finish(index); });
    return field;
}

LengthField* StylePart::addField(QFormLayout& form, const StyleFigure& figure) {
    LengthField* field = makeField(figure);
    bound_.back().complaint = complaintLabel();
    auto* label = new QLabel(figure.label);
    label->setBuddy(field);
    form.addRow(label, field);
    form.addRow(bound_.back().complaint);
    return field;
}

void StylePart::setSuggestion(std::size_t figure, std::optional<double> mm) {
    const Bound& bound = bound_.at(figure);
    if (bound.slider != nullptr) {
        bound.slider->setSuggestionMm(mm);
    } else {
        bound.field->setSuggestionMm(mm);
    }
}

void StylePart::forgetFields() { bound_.clear(); }

void StylePart::finish(std::size_t index) {
    endRun();
    if (index >= bound_.size() || bound_[index].field->valueMm()) return;
    if (!bound_[index].figure.mayStayOpen) StylePart::refresh();
}

// An emptied field that needs a figure keeps the old one; the text comes back when it is left.
void StylePart::take(std::size_t index, std::optional<double> mm) {
    if (index >= bound_.size()) return;
    const StyleFigure figure = bound_[index].figure;
    complain(index, {});
    if (!mm && !figure.mayStayOpen) return;
    edit([&](Style& style) { figure.write(style, mm); }, figure.words, figure.key);
}

void StylePart::complain(std::size_t index, const QString& sentence) {
    if (index >= bound_.size()) return;
    bound_[index].field->setToolTip(sentence);
    bound_[index].field->setAccessibleDescription(sentence);
    QLabel* label = bound_[index].complaint;
    if (label == nullptr) return;
    label->setText(sentence);
    label->setVisible(!sentence.isEmpty());
}

}  // namespace coutil
