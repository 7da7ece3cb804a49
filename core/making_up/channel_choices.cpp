#include "core/making_up/channel_choices.h"

namespace coutil {

std::string_view keyOf(ChannelCarrier carrier) {
    return carrier == ChannelCarrier::tape ? "tape" : "own_allowance";
}

}  // namespace coutil
