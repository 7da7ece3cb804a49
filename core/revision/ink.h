#pragma once

#include <string>
#include <string_view>

#include "core/problems/problem.h"
#include "core/revision/revision.h"

namespace coutil {

// The pattern with every coordinate and length on the ink grid (tolerance::kInkGridMm). Nothing
// moves by more than half a step; shared corners stay shared.
[[nodiscard]] Pattern onInkGrid(const Pattern& pattern);

// Outlines as text: whole micrometres, one edge a line. Exact: patternFromInkText() gives the same
// pattern back to the last bit when it is on the grid. Problem fileDamaged for any other text.
[[nodiscard]] std::string inkText(const Pattern& pattern);
[[nodiscard]] Outcome<Pattern> patternFromInkText(std::string_view text);

// Goes over a revision in ink: puts the pattern on the grid and computes the digest (SHA-256, FIPS
// 180-4) over all of the content, the parent's digest among it. `recipeText` is the recipe as the
// store writes it.
[[nodiscard]] Revision inkOver(RevisionContent content, std::string recipeText);

// A revision as it was stored. Problem revisionTampered (subject = number) when the digest does not
// fit every byte of it. `content.pattern` is not looked at: it is read from `inkText`.
[[nodiscard]] Outcome<Revision> inkRead(RevisionContent content, std::string recipeText,
                                        std::string inkText, const std::string& digest);

}  // namespace coutil
