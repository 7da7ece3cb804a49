#pragma once

#include <optional>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// What today's drafting rules would make of a confirmed revision, on the ink grid. Replayed from
// ink to ink, as it came about: its parent's replay and its own alterations, or (a first revision,
// other measurements, another style) the block and every alteration since. By unchanged rules that
// is its own ink to the last bit. Nothing where the block can't be drafted.
[[nodiscard]] std::optional<Pattern> replayOf(const Folio& folio, const Revision& revision);

// A report, nothing else: ink is never drafted again. Notes (subject = the revision's number), in
// the order of the garment's revisions: rulesChanged where an outline lies further from its replay
// than the search for the largest distance can tell (tolerance::kCompareSearchMm, ten steps of the
// ink grid; unchanged rules give nothing at all, the mathematical functions of another machine may
// tip a coordinate over by a step or two). With the distance (figure "value"), its panel and place;
// without a figure where the replay has not the same panels and edges (panel = the first of those),
// without a panel where today's rules draw nothing.
// Under it one rulesChanged for each alteration that the replay leaves out and confirming did not
// (figure "revision"; subject = its kind, detail = the place it names).
[[nodiscard]] std::vector<Problem> driftIn(const Folio& folio, const Garment& garment);

}  // namespace coutil
