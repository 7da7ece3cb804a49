#include "core/tracing/tracing_choices.h"

namespace coutil {

std::string_view keyOf(NotchShape shape) {
    switch (shape) {
        case NotchShape::slit:
            return "slit";
        case NotchShape::vee:
            return "vee";
        case NotchShape::tick:
            return "tick";
    }
    return {};
}

std::string_view keyOf(LinesShown lines) {
    switch (lines) {
        case LinesShown::sewing:
            return "sewing";
        case LinesShown::cutting:
            return "cutting";
        case LinesShown::both:
            return "both";
    }
    return {};
}

}  // namespace coutil
