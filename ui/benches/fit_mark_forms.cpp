#include "ui/benches/fit_mark_forms.h"

#include <QCoreApplication>
#include <cmath>
#include <optional>

#include "core/block/style.h"
#include "ui/words/alteration_words.h"
#include "ui/words/mark_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MarkForms)
};

std::vector<MarkForm> madeForms() {
    const auto term = [](MarkKind kind) { return markTerm(keyOf(kind)); };
    const auto seam = [](MarkKind kind) {
        return Words::tr("%1, at a seam", "pinned").arg(markTerm(keyOf(kind)));
    };
    const HeightPlace waist{.level = std::string(keyOf(LevelId::waist))};
    return {
        {seam(MarkKind::pinned), MarkKind::pinned, SeamPlace{}},
        {seam(MarkKind::opened), MarkKind::opened, SeamPlace{}},
        {Words::tr("tuck pinned inside a panel"), MarkKind::pinned, TuckPlace{}},
        {Words::tr("slit cut into a panel"), MarkKind::opened, SlitPlace{{}, EdgeLine::top, 0, 60}},
        {Words::tr("top or bottom edge raised"), MarkKind::raise, OnLinePlace{}},
        {Words::tr("top or bottom edge lowered"), MarkKind::lower, OnLinePlace{}},
        {term(MarkKind::longer), MarkKind::longer, waist},
        {term(MarkKind::shorter), MarkKind::shorter, waist},
        {term(MarkKind::bustPointHigher), MarkKind::bustPointHigher, std::monostate{}},
        {term(MarkKind::bustPointLower), MarkKind::bustPointLower, std::monostate{}},
        {term(MarkKind::bustPointWider), MarkKind::bustPointWider, std::monostate{}},
        {term(MarkKind::gapes), MarkKind::gapes, SeamPlace{}},
        {term(MarkKind::cutsIn), MarkKind::cutsIn, SeamPlace{}},
        {term(MarkKind::bonePokes), MarkKind::bonePokes, SeamPlace{}},
    };
}

std::optional<MarkKind> oppositeOf(MarkKind kind) {
    switch (kind) {
        case MarkKind::pinned:
            return MarkKind::opened;
        case MarkKind::opened:
            return MarkKind::pinned;
        case MarkKind::raise:
            return MarkKind::lower;
        case MarkKind::lower:
            return MarkKind::raise;
        case MarkKind::longer:
            return MarkKind::shorter;
        case MarkKind::shorter:
            return MarkKind::longer;
        case MarkKind::bustPointHigher:
            return MarkKind::bustPointLower;
        case MarkKind::bustPointLower:
            return MarkKind::bustPointHigher;
        default:
            return std::nullopt;
    }
}

struct HasPlace {
    bool operator()(std::monostate) const { return true; }
    bool operator()(const SeamPlace& place) const { return !place.seam.empty(); }
    bool operator()(const TuckPlace& place) const { return !place.panel.empty(); }
    bool operator()(const SlitPlace& place) const {
        return !place.panel.empty() && place.lengthMm > 0;
    }
    bool operator()(const OnLinePlace& place) const {
        return !place.at.seam.empty() || !place.at.panel.empty();
    }
    bool operator()(const HeightPlace&) const { return true; }
};

}  // namespace

// Made once: the language is chosen before the first window.
const std::vector<MarkForm>& markForms() {
    static const std::vector<MarkForm> forms = madeForms();
    return forms;
}

int formOf(const Mark& mark) {
    const auto& forms = markForms();
    for (std::size_t f = 0; f < forms.size(); ++f) {
        if (forms[f].kind == mark.kind && forms[f].place.index() == mark.place.index())
            return static_cast<int>(f);
    }
    for (std::size_t f = 0; f < forms.size(); ++f)  // a kind read from elsewhere, at another place
        if (forms[f].kind == mark.kind) return static_cast<int>(f);
    return 0;
}

Mark inForm(const Mark& mark, int form) {
    const MarkForm& wanted = markForms().at(static_cast<std::size_t>(form));
    Mark made = mark;
    made.kind = wanted.kind;
    if (wanted.place.index() != mark.place.index()) made.place = wanted.place;
    if (isNote(made.kind)) made.amountMm = 0;
    return made;
}

bool isComplete(const Mark& mark) {
    return std::visit(HasPlace{}, mark.place) && (isNote(mark.kind) || mark.amountMm > 0);
}

MarkKind unsignedKind(MarkKind kind) {
    switch (kind) {
        case MarkKind::opened:
        case MarkKind::lower:
        case MarkKind::shorter:
        case MarkKind::bustPointLower:
            return oppositeOf(kind).value();
        default:
            return kind;
    }
}

Mark withAmount(const Mark& mark, MarkKind entered, double mm) {
    Mark made = mark;
    made.kind = entered;
    const auto opposite = oppositeOf(entered);
    // A slit or a tuck is what it is; it has no opposite at its place.
    const bool mayTurn = !std::holds_alternative<TuckPlace>(mark.place) &&
                         !std::holds_alternative<SlitPlace>(mark.place);
    if (mm < 0 && opposite && mayTurn) made.kind = *opposite;
    made.amountMm = std::abs(mm);
    return made;
}

}  // namespace coutil
