#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"
#include "core/block/style.h"
#include "core/measurements/measurement_set.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"
#include "core/revision/folio.h"
#include "core/store/uuid.h"
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

// Alterations, and the marks of a fitting with its head (revision: the number; absent: the pencil),
// read and written the same way. An entry without an id gets one from `newId`. Lengths are within a
// metre (lengthOutOfRange) and amounts of marks not negative (lengthNegative). Whether the places
// are in a pattern is for applyAlterations() and alterationsFrom().
struct MarksText {
    std::string date;  // ISO 8601, may be empty
    std::optional<int> revision;
    FittingKind how = FittingKind::inPerson;
    std::string by;
    std::string note;
    std::vector<Mark> marks;

    bool operator==(const MarksText&) const = default;
};
[[nodiscard]] Outcome<std::vector<Alteration>> readAlterationsJson(
    std::string_view text, const std::function<std::string()>& newId = newUuid);
[[nodiscard]] std::string writeAlterationsJson(const std::vector<Alteration>& alterations);
[[nodiscard]] Outcome<MarksText> readMarksJson(std::string_view text,
                                               const std::function<std::string()>& newId = newUuid);
[[nodiscard]] std::string writeMarksJson(const MarksText& marks);

// How a revision came about, in one line of text: measurements, style and alterations, each as in
// its own format. A confirmed revision keeps this text for ever; recipes are read in the store
// only.
[[nodiscard]] std::string writeRecipeJson(const Recipe& recipe);

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
