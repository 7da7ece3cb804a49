#pragma once

#include <QString>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/comparison/alterations_between.h"
#include "core/comparison/comparison.h"
#include "core/comparison/girth_chart.h"
#include "core/revision/folio.h"

namespace coutil {

// A revision or pencil of the folio that can be compared.
struct ComparableState {
    StateRef state;
    QString words;       // "revision 2, 18 Mar 2026"; with its garment, where that is another
    int revision = 0;    // its number; 0: a pencil
    std::string parent;  // digest; empty: a block
};

[[nodiscard]] bool isSameState(const StateRef& a, const StateRef& b);

// All states of a folio: those of the garment at this index first, pencils before revisions, the
// newest first; then those of the other garments.
[[nodiscard]] std::vector<ComparableState> comparableStates(const Folio& folio,
                                                            std::size_t garment);

// The pattern of a state; nothing where it is not in the folio or its block cannot be drafted.
[[nodiscard]] std::optional<Pattern> patternOf(const Folio& folio, const StateRef& state);

// One of the two that are compared: its line on table and paper, its pattern.
struct ComparedState {
    QString name;
    int revision = 0;       // number of the ink its line is drawn with; 0: graphite
    bool isDotted = false;  // the second of two graphite lines
    Pattern pattern;
};

// Two states, or the two sides of one (then `a` is left and `b` right, both with its pattern), and
// everything that is different between them.
struct ComparedStates {
    ComparedState a;
    ComparedState b;
    bool areSides = false;
    QString client;  // may be empty
    QString garment;
    Comparison comparison;
    GirthChart chart;
    AlterationsBetween between;  // empty for sides
};

// Lines of two states never look alike: where both would have the same ink, b takes the next.
// nullptr where a state has no pattern.
[[nodiscard]] std::shared_ptr<const ComparedStates> comparedStates(const Folio& folio,
                                                                   const StateRef& a,
                                                                   const StateRef& b);
[[nodiscard]] std::shared_ptr<const ComparedStates> comparedSides(const Folio& folio,
                                                                  const StateRef& state);

// What stands at its line: "A: revision 1, 2 Mar 2026"; "left".
[[nodiscard]] QString lineNameA(const ComparedStates& states);
[[nodiscard]] QString lineNameB(const ComparedStates& states);

// "revision 1, 2 Mar 2026 against pencil".
[[nodiscard]] QString titleOf(const ComparedStates& states);

}  // namespace coutil
