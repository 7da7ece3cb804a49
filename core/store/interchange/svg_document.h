#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "core/problems/problem.h"
#include "core/store/interchange/svg_transform.h"

namespace pugi {
class xml_document;
class xml_node;
}  // namespace pugi

namespace coutil::interchange {

// Limits far beyond any drawing of this program.
inline constexpr std::size_t kMostSvgBytes = 64'000'000;
inline constexpr int kDeepestSvg = 60;

// The parsed text, kept alive.
struct SvgDocument {
    std::shared_ptr<pugi::xml_document> xml;
    SvgTransform toPageMm;  // from user units to mm, y still down
    double widthMm = 0;
    double heightMm = 0;
};

// Problems: drawingTooLarge, drawingUnreadable, drawingForeign (no SVG).
[[nodiscard]] Outcome<SvgDocument> openSvg(std::string_view svg);

[[nodiscard]] Problem brokenDrawing(std::string_view place, std::string_view whole,
                                    std::ptrdiff_t offset);

}  // namespace coutil::interchange
