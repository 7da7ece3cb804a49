#include "ui/benches/fit_place_fields.h"

#include <QFormLayout>
#include <QLabel>
#include <algorithm>

#include "core/alterations/find_places.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/length_field.h"
#include "ui/words/alteration_places.h"
#include "ui/words/trade_words.h"

namespace coutil {

FitPlaceFields::FitPlaceFields(QWidget* parent)
    : QWidget(parent),
      form_(new QFormLayout(this)),
      where_(new ChoiceField),
      edge_(new ChoiceField),
      along_(new LengthField),
      length_(new LengthField) {
    form_->setContentsMargins(0, 0, 0, 0);
    form_->addRow(tr("Edge"), edge_);
    form_->addRow(tr("Seam"), where_);
    form_->addRow(tr("Up from the waist"), along_);
    form_->addRow(tr("Length of the slit"), length_);
    edge_->setChoices(
        {{edgeName("top"), int(EdgeLine::top)}, {edgeName("bottom"), int(EdgeLine::bottom)}});
    edge_->setAccessibleName(tr("Edge"));
    where_->setObjectName(QStringLiteral("markWhere"));
    along_->setObjectName(QStringLiteral("markPosition"));
    length_->setObjectName(QStringLiteral("markLength"));
    edge_->setObjectName(QStringLiteral("markEdge"));
    length_->setAccessibleName(tr("Length of the slit"));
    length_->setMayBeNegative(false);
    connect(where_, &ChoiceField::chosen, this, &FitPlaceFields::takeName);
    connect(edge_, &ChoiceField::chosen, this, &FitPlaceFields::takeEdge);
    connect(along_, &LengthField::edited, this, &FitPlaceFields::takeAlong);
    connect(length_, &LengthField::edited, this, &FitPlaceFields::takeLength);
    for (LengthField* field : {along_, length_})
        connect(field, &LengthField::left, this, &FitPlaceFields::left);
}

LengthField* FitPlaceFields::firstFigure() const {
    return form_->isRowVisible(along_) ? along_ : nullptr;
}

// Shows the fields of each kind of place.
struct ShownPlace {
    FitPlaceFields& fields;
    const Pattern& pattern;

    using Name = FitPlaceFields::Name;

    // One of each name: left and right have the same.
    static void add(std::vector<Name>& names, const Name& name) {
        const auto isIt = [&](const Name& each) {
            return each.key == name.key && each.isSeam == name.isSeam;
        };
        if (std::ranges::none_of(names, isIt)) names.push_back(name);
    }
    [[nodiscard]] std::vector<Name> seams() const {
        std::vector<Name> names;
        const auto centre = [&](const char* key) {
            for (const EdgeRef& ref : edgesNamed(pattern, key, BodySide::both))
                if (edgeAt(pattern, ref).waistMarkAtMm) add(names, {key, true, edgeName(key)});
        };
        centre("centre front");
        for (const Seam& seam : pattern.seams) {
            if (!isCentreName(edgeAt(pattern, seam.front).name))
                add(names, {seam.name, true, seamName(seam.name)});
        }
        centre("centre back");
        return names;
    }
    [[nodiscard]] std::vector<Name> panels() const {
        std::vector<Name> names;
        for (const Panel& panel : pattern.panels) {
            add(names, {panel.name, false,
                        FitPlaceFields::tr("panel %1").arg(QString::fromStdString(panel.name))});
        }
        return names;
    }
    [[nodiscard]] std::vector<Name> heights() const {
        std::vector<Name> names;
        for (const Level& level : pattern.levels)
            names.push_back({level.name, false, levelName(level.name)});
        names.push_back({{}, false, FitPlaceFields::tr("a height")});
        return names;
    }

    void operator()(std::monostate) const {
        fields.showEdge(std::nullopt);
        fields.showNames({}, {}, {});
        fields.showFigures({}, std::nullopt, std::nullopt);
    }
    void operator()(const SeamPlace& place) const {
        fields.showEdge(std::nullopt);
        fields.showNames(seams(), FitPlaceFields::tr("Seam"), {place.seam, true, {}});
        fields.showFigures(FitPlaceFields::tr("Up from the waist"), place.positionMm, std::nullopt);
    }
    void operator()(const TuckPlace& place) const {
        fields.showEdge(std::nullopt);
        fields.showNames(panels(), FitPlaceFields::tr("Panel"), {place.panel, false, {}});
        fields.showFigures(FitPlaceFields::tr("Up from the waist"), place.heightMm, std::nullopt);
    }
    void operator()(const SlitPlace& place) const {
        fields.showEdge(place.from);
        fields.showNames(panels(), FitPlaceFields::tr("Panel"), {place.panel, false, {}});
        fields.showFigures(FitPlaceFields::tr("From its front end"), place.alongMm, place.lengthMm);
    }
    void operator()(const OnLinePlace& place) const {
        fields.showEdge(place.line);
        std::vector<Name> names = seams();
        for (const Name& panel : panels()) names.push_back(panel);
        const bool isAtSeam = !place.at.seam.empty();
        fields.showNames(names, FitPlaceFields::tr("At"),
                         {isAtSeam ? place.at.seam : place.at.panel, isAtSeam, {}});
        fields.showFigures(FitPlaceFields::tr("From its front end"),
                           isAtSeam ? std::nullopt : std::optional(place.at.alongMm), std::nullopt);
    }
    void operator()(const HeightPlace& place) const {
        fields.showEdge(std::nullopt);
        fields.showNames(heights(), FitPlaceFields::tr("At"), {place.level, false, {}});
        fields.showFigures(FitPlaceFields::tr("Up from the waist"),
                           place.level.empty() ? std::optional(place.heightMm) : std::nullopt,
                           std::nullopt);
    }
};

void FitPlaceFields::showPlace(const MarkPlace& place, const Pattern& pattern, LengthUnit unit) {
    place_ = place;
    along_->setUnit(unit);
    length_->setUnit(unit);
    std::visit(ShownPlace{*this, pattern}, place);
}

void FitPlaceFields::showNames(const std::vector<Name>& names, const QString& label,
                               const Name& picked) {
    form_->setRowVisible(where_, !names.empty());
    if (auto* text = qobject_cast<QLabel*>(form_->labelForField(where_))) text->setText(label);
    where_->setAccessibleName(label);
    names_ = names;
    const auto isIt = [&](const Name& each) {
        return each.key == picked.key && each.isSeam == picked.isSeam;
    };
    // A place of another pattern is still shown as what it is.
    if (!picked.key.empty() && std::ranges::none_of(names_, isIt)) {
        names_.push_back(
            {picked.key, picked.isSeam, tr("%1 (not here)").arg(seamName(picked.key))});
    }
    QList<ChoiceField::Choice> choices;
    for (const Name& each : names_) choices.append({each.words, int(choices.size())});
    where_->setChoices(choices);
    const auto found = std::ranges::find_if(names_, isIt);
    where_->setValue(found == names_.end() ? -1 : static_cast<int>(found - names_.begin()));
}

void FitPlaceFields::showFigures(const QString& label, std::optional<double> alongMm,
                                 std::optional<double> lengthMm) {
    form_->setRowVisible(along_, alongMm.has_value());
    form_->setRowVisible(length_, lengthMm.has_value());
    if (auto* text = qobject_cast<QLabel*>(form_->labelForField(along_))) text->setText(label);
    along_->setAccessibleName(label);
    if (alongMm) along_->setValueMm(alongMm);
    if (lengthMm) length_->setValueMm(lengthMm);
}

void FitPlaceFields::showEdge(std::optional<EdgeLine> line) {
    form_->setRowVisible(edge_, line.has_value());
    if (line) edge_->setValue(int(*line));
}

void FitPlaceFields::takeName(int index) {
    const Name& name = names_.at(static_cast<std::size_t>(index));
    if (auto* seam = std::get_if<SeamPlace>(&place_)) seam->seam = name.key;
    if (auto* tuck = std::get_if<TuckPlace>(&place_)) tuck->panel = name.key;
    if (auto* slit = std::get_if<SlitPlace>(&place_)) slit->panel = name.key;
    if (auto* height = std::get_if<HeightPlace>(&place_)) height->level = name.key;
    if (auto* line = std::get_if<OnLinePlace>(&place_)) {
        line->at.seam = name.isSeam ? name.key : std::string();
        line->at.panel = name.isSeam ? std::string() : name.key;
    }
    emit edited(place_, QStringLiteral("where"));
}

void FitPlaceFields::takeEdge(int line) {
    if (auto* slit = std::get_if<SlitPlace>(&place_)) slit->from = EdgeLine(line);
    if (auto* on = std::get_if<OnLinePlace>(&place_)) on->line = EdgeLine(line);
    emit edited(place_, QStringLiteral("edge"));
}

void FitPlaceFields::takeAlong(std::optional<double> mm) {
    if (!mm) return;
    if (auto* seam = std::get_if<SeamPlace>(&place_)) seam->positionMm = *mm;
    if (auto* tuck = std::get_if<TuckPlace>(&place_)) tuck->heightMm = *mm;
    if (auto* slit = std::get_if<SlitPlace>(&place_)) slit->alongMm = *mm;
    if (auto* on = std::get_if<OnLinePlace>(&place_)) on->at.alongMm = *mm;
    if (auto* height = std::get_if<HeightPlace>(&place_)) height->heightMm = *mm;
    emit edited(place_, QStringLiteral("along"));
}

void FitPlaceFields::takeLength(std::optional<double> mm) {
    auto* slit = std::get_if<SlitPlace>(&place_);
    if (slit == nullptr || !mm) return;
    slit->lengthMm = *mm;
    emit edited(place_, QStringLiteral("length"));
}

}  // namespace coutil
