#include "ui/comparing/compared_states.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "core/revision/pencil_outcome.h"
#include "ui/words/revision_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ComparedStates)
};

QString withGarment(const QString& words, const Garment& garment) {
    return Words::tr("%1: %2", "garment, revision")
        .arg(QString::fromStdString(garment.name), words);
}

std::vector<ComparableState> statesOf(const Garment& garment, bool isNamed) {
    std::vector<ComparableState> states;
    const auto words = [&](const QString& own) {
        return isNamed ? withGarment(own, garment) : own;
    };
    for (auto pencil = garment.pencils.rbegin(); pencil != garment.pencils.rend(); ++pencil) {
        states.push_back({{{}, pencil->id}, words(pencilName(*pencil)), 0, pencil->parent});
    }
    for (auto each = garment.revisions.rbegin(); each != garment.revisions.rend(); ++each) {
        const Revision& revision = **each;
        states.push_back({{revision.digest(), {}},
                          words(revisionName(revision)),
                          revision.number(),
                          revision.content().parent});
    }
    return states;
}

const Garment* garmentOf(const Folio& folio, const StateRef& state) {
    for (const Garment& garment : folio.garments) {
        if (!state.pencil.empty() && findPencil(garment, state.pencil) != nullptr) return &garment;
        for (const auto& revision : garment.revisions) {
            if (revision->digest() == state.digest) return &garment;
        }
    }
    return nullptr;
}

std::optional<ComparedState> comparedState(const Folio& folio, const StateRef& state,
                                           bool isGarmentNamed) {
    auto pattern = patternOf(folio, state);
    const Garment* garment = garmentOf(folio, state);
    if (!pattern || garment == nullptr) return std::nullopt;
    for (const ComparableState& each : statesOf(*garment, isGarmentNamed)) {
        if (!isSameState(each.state, state)) continue;
        return ComparedState{each.words, each.revision, false, std::move(*pattern)};
    }
    return std::nullopt;
}

void tellApart(const ComparedState& a, ComparedState& b) {
    if (a.revision != b.revision) return;
    if (b.revision == 0) {
        b.isDotted = true;
    } else {
        ++b.revision;
    }
}

}  // namespace

bool isSameState(const StateRef& a, const StateRef& b) {
    return a.digest.empty() ? b.digest.empty() && a.pencil == b.pencil : a.digest == b.digest;
}

std::vector<ComparableState> comparableStates(const Folio& folio, std::size_t garment) {
    std::vector<ComparableState> states;
    if (garment < folio.garments.size()) states = statesOf(folio.garments[garment], false);
    for (std::size_t i = 0; i < folio.garments.size(); ++i) {
        if (i == garment) continue;
        auto others = statesOf(folio.garments[i], true);
        std::ranges::move(others, std::back_inserter(states));
    }
    return states;
}

std::optional<Pattern> patternOf(const Folio& folio, const StateRef& state) {
    if (!state.digest.empty()) {
        const Revision* revision = findRevision(folio, state.digest);
        return revision == nullptr ? std::nullopt : std::optional(revision->pattern());
    }
    for (const Garment& garment : folio.garments) {
        const Pencil* pencil = findPencil(garment, state.pencil);
        if (pencil != nullptr) return pencilOutcome(folio, *pencil).pattern;
    }
    return std::nullopt;
}

std::shared_ptr<const ComparedStates> comparedStates(const Folio& folio, const StateRef& a,
                                                     const StateRef& b) {
    const Garment* garmentA = garmentOf(folio, a);
    const bool areOfTwo = garmentA != garmentOf(folio, b);
    auto first = comparedState(folio, a, areOfTwo);
    auto second = comparedState(folio, b, areOfTwo);
    if (!first || !second) return nullptr;
    tellApart(*first, *second);
    auto made = std::make_shared<ComparedStates>();
    made->a = std::move(*first);
    made->b = std::move(*second);
    made->client = QString::fromStdString(folio.client);
    if (!areOfTwo) made->garment = QString::fromStdString(garmentA->name);
    made->between = alterationsBetween(folio, a, b);
    made->comparison = comparePatterns(
        made->a.pattern, made->b.pattern,
        made->between.isSameBlock ? Registration::ownFrame : Registration::automatic);
    made->chart = girthChart(made->a.pattern, made->b.pattern);
    return made;
}

std::shared_ptr<const ComparedStates> comparedSides(const Folio& folio, const StateRef& state) {
    auto left = comparedState(folio, state, false);
    if (!left) return nullptr;
    auto made = std::make_shared<ComparedStates>();
    made->areSides = true;
    made->a = *left;
    made->b = std::move(*left);
    tellApart(made->a, made->b);
    made->client = QString::fromStdString(folio.client);
    made->garment = QString::fromStdString(garmentOf(folio, state)->name);
    made->comparison = compareSides(made->a.pattern);
    made->chart = girthChartOfSides(made->a.pattern);
    return made;
}

QString lineNameA(const ComparedStates& states) {
    return states.areSides ? Words::tr("left side") : Words::tr("A: %1").arg(states.a.name);
}

QString lineNameB(const ComparedStates& states) {
    return states.areSides ? Words::tr("right side") : Words::tr("B: %1").arg(states.b.name);
}

QString titleOf(const ComparedStates& states) {
    return states.areSides ? Words::tr("%1: left against right").arg(states.a.name)
                           : Words::tr("%1 against %2").arg(states.a.name, states.b.name);
}

}  // namespace coutil
