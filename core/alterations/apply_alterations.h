#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// A pattern after its alterations. An alteration that does not fit is left out: its index is in
// `leftOut`, and a problem names it.
struct AlteredPattern {
    Pattern pattern;
    std::vector<Problem> problems;
    std::vector<std::size_t> leftOut;
};

// Applies the alterations that are switched on, in order. Seams keep equal lengths over and under
// the waist; top and bottom lines are drawn again through the ends that moved; levels and girths
// follow. ShapeSeam alterations of one seam and side that follow each other are readings of one
// mock-up: their amounts are added before they are applied, so that an amount and its opposite
// leave nothing. ChangeStyle and TakeMeasurements are passed over: they concern the block.
//
// Problems (severity error; subject = kind, detail = the seam, panel or level it names):
// alterationUnfit (its place is not in this pattern), alterationTooLarge (figures "value",
// "limit"), alterationBadValue (not a number, or contradictory), and alterationBreaksPanel (with it
// an outline crosses itself or a panel is gone). A one-sided alteration makes a symmetric pattern
// whole first.
[[nodiscard]] AlteredPattern applyAlterations(const Pattern& base,
                                              std::span<const Alteration> alterations);

// The alterations that take back what `alteration` did to `before`, giving the same outlines within
// tolerance::kTakenBackMm (proven by applying them): alterations of the altered pattern, in order,
// without ids. Mostly one, the opposite change; where that alone misses by more, corrections follow
// it: a ShapeSeam for each edge and a ReshapeEdge for each line that is still off. In one run of
// ShapeSeams with the first, take the opposite amounts or switch it off instead. An empty list
// where nothing needs taking back. Nothing where the alteration does not fit `before`, for the
// kinds that give something up which no alteration brings again (join, symmetric, style,
// measurements), and where corrections don't come near enough: 4 of 1787 random alterations (3
// ShapeSeams, 1 moved handle).
[[nodiscard]] std::optional<std::vector<Alteration>> inverseOf(const Alteration& alteration,
                                                               const Pattern& before);

// What the marks of a fitting ask for: the readings on one seam and side become one ShapeSeam, and
// so on, in the order of the marks; notes and marks that are switched off make none. `previous` are
// the alterations these marks made before: one for the same place keeps its id, fades and split.
// `newId` makes the id of every other one. Problems: markUnfit (a place that is not in the pattern;
// subject = kind of mark, detail = its seam or panel).
struct FromMarks {
    std::vector<Alteration> alterations;
    std::vector<Problem> problems;
};
[[nodiscard]] FromMarks alterationsFrom(std::span<const Mark> marks, const Pattern& pattern,
                                        std::span<const Alteration> previous,
                                        const std::function<std::string()>& newId);

}  // namespace coutil
