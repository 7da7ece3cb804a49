#include "core/making_up/layer.h"

namespace coutil {

std::vector<Layer> usualLayers() {
    Layer mockUp{.key = "mock_up"};
    mockUp.isMade = false;
    mockUp.seamAllowanceMm = 20;
    mockUp.areEdgesBound = false;
    return {Layer{.key = "strength"}, Layer{.key = "outer"}, Layer{.key = "lining"}, mockUp};
}

}  // namespace coutil
