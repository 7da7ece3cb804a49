#pragma once

#include <QString>

#include "core/problems/problem.h"
#include "core/units/length.h"

namespace coutil {

// Puts a problem's facts into a pattern for a sentence:
//   {subject} {detail}   names for people: measurements, levels, edges, style entries by their
//   terms, a
//                        list of several joined with commas, anything else as it stands
//   {path} {text}        subject and detail as they stand: a file, the path of a key, what was
//   typed {panel}              the panel's name {name}               the figure of that name,
//   lengths in `unit`; under a millimetre in mm {name:fine}          the same always in mm, to a
//   hundredth [ ... ]              left out when something asked for inside is not there
// What is not there outside of brackets becomes "?".
[[nodiscard]] QString filledSentence(const QString& pattern, const Problem& problem,
                                     LengthUnit unit);

}  // namespace coutil
