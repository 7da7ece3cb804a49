#pragma once

#include <string>
#include <vector>

#include "core/comparison/alterations_between.h"
#include "core/comparison/comparison.h"
#include "core/comparison/girth_chart.h"
#include "core/store/text_formats.h"

namespace coutil {

// Everything that `compare` tells of two revisions.
struct ComparisonReport {
    RevisionHead a;
    RevisionHead b;
    Comparison comparison{};
    GirthChart chart{};
    AlterationsBetween alterations{};
};

// What `compare --json` prints; fields in DEVELOPERS.md. All mm; what is absent is null.
// Alterations stand there as writeAlterationsJson() writes them, with their revision beside them.
[[nodiscard]] std::string writeComparisonJson(const ComparisonReport& report);

// How a revision is drawn over another: a colour ("#0072b2"), dashes in mm (empty: unbroken), and
// the words beside its line in the legend.
struct ComparedLine {
    std::string colour;
    std::vector<double> dashesMm;
    std::string label;
};

// Both patterns, b laid over a panel by panel, in true millimetres: a thin, b thick in its ink.
// A named group per panel with groups "-a", "-b" (an edge each), "-levels", "-register" (waist
// marks and grain of a). Left panels over right ones. Panels of one only are drawn alone.
[[nodiscard]] std::string writeComparisonSvg(const Pattern& a, const Pattern& b,
                                             const Comparison& comparison,
                                             const ComparedLine& lineA, const ComparedLine& lineB,
                                             const std::string& title);

}  // namespace coutil
