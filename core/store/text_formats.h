#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/block/style.h"
#include "core/measurements/measurement_set.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"
#include "core/tracing/tracing.h"

namespace coutil {

// Turns a problem into a sentence; given by ui, which owns the words.
using SentenceOf = std::function<std::string(const Problem&)>;

// Measurements and style as JSON text, formats in DEVELOPERS.md. Reading names every unknown key
// (jsonUnknownKey, measurementUnknown; the detail is the known key nearest to it), every wrong type
// (jsonWants...) and unreadable figure (lengthUnreadable, dateUnreadable); the subject is the path
// of the key ("values.bust_girth"). A text that is no JSON or another kind of file has one problem:
// jsonBroken (figures "line" and "column"), jsonTooLarge, jsonKeyTwice, jsonWrongKind,
// jsonWrongVersion. No value when anything is wrong. Whether the values make sense is for
// checkMeasurements() and checkStyle(). What is written is read back as the same value, to the last
// bit.
[[nodiscard]] Outcome<MeasurementSet> readMeasurementsJson(std::string_view text);
[[nodiscard]] std::string writeMeasurementsJson(const MeasurementSet& set);
[[nodiscard]] Outcome<Style> readStyleJson(std::string_view text);
[[nodiscard]] std::string writeStyleJson(const Style& style);

// What `pattern --json` and `trace --json` print.
struct RevisionHead {
    std::string id = "pencil";
    std::string state = "pencil";
    std::string date;
    std::string parent;  // empty: none
    std::string digest;  // empty: none
};
[[nodiscard]] std::string writePatternJson(const Pattern& pattern, const RevisionHead& revision,
                                           const std::vector<Problem>& problems,
                                           const SentenceOf& sentence);
[[nodiscard]] std::string writeTracingsJson(const std::vector<Tracing>& tracings,
                                            const TracingTitle& title,
                                            const std::vector<Problem>& problems,
                                            const SentenceOf& sentence);

}  // namespace coutil
