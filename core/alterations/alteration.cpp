#include "core/alterations/alteration.h"

#include <array>

namespace coutil {

std::string_view keyOf(BodySide side) {
    switch (side) {
        case BodySide::both:
            return "both";
        case BodySide::left:
            return "left";
        case BodySide::right:
            return "right";
    }
    return {};
}

std::string_view keyOf(EdgeLine line) { return line == EdgeLine::top ? "top" : "bottom"; }

std::string_view keyOf(SymmetrySource source) {
    switch (source) {
        case SymmetrySource::mean:
            return "mean";
        case SymmetrySource::left:
            return "left";
        case SymmetrySource::right:
            return "right";
    }
    return {};
}

std::string_view kindOf(const Change& change) {
    // In the order of the variant.
    static constexpr std::array<std::string_view, std::variant_size_v<Change>> kKinds{
        "shape_seam",  "open_panel",     "change_length", "reshape_edge",
        "move_level",  "move_corner",    "move_handle",   "split_panel",
        "join_panels", "make_symmetric", "change_style",  "take_measurements"};
    return kKinds[change.index()];
}

}  // namespace coutil
