#include "core/units/length.h"

namespace coutil {

double millimetresIn(LengthUnit unit) {
    switch (unit) {
        case LengthUnit::millimetre:
            return 1;
        case LengthUnit::centimetre:
            return 10;
        case LengthUnit::inch:
            return 25.4;
    }
    return 1;
}

std::string_view keyOf(LengthUnit unit) {
    switch (unit) {
        case LengthUnit::millimetre:
            return "mm";
        case LengthUnit::centimetre:
            return "cm";
        case LengthUnit::inch:
            return "in";
    }
    return {};
}

}  // namespace coutil
