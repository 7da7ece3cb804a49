#pragma once

#include <string_view>
#include <vector>

namespace coutil {

// The kinds of lines on tracings, sheets and drawings for other programs. Every one has its own
// layer there: a named group of an SVG, a layer of a PDF; a key is never changed once written.
#define COUTIL_LINE_KINDS(X)         \
    X(cutting, "cutting")            \
    X(sewing, "sewing")              \
    X(notches, "notches")            \
    X(grain, "grain")                \
    X(fold, "fold")                  \
    X(levels, "levels")              \
    X(channels, "channels")          \
    X(eyelets, "eyelets")            \
    X(studs, "studs")                \
    X(waistTape, "waist-tape")       \
    X(matchNumbers, "match-numbers") \
    X(labels, "labels")              \
    X(joins, "joins")

enum class LineKind {
#define COUTIL_LINE_KIND_NAME(name, key) name,
    COUTIL_LINE_KINDS(COUTIL_LINE_KIND_NAME)
#undef COUTIL_LINE_KIND_NAME
};

// "cutting", "waist-tape": small letters and hyphens, fit for an XML name.
[[nodiscard]] std::string_view keyOf(LineKind kind);

// All kinds, in the order of their definition.
[[nodiscard]] const std::vector<LineKind>& allLineKinds();

}  // namespace coutil
