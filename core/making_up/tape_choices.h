#pragma once

namespace coutil {

struct WaistTapeChoices {
    bool isWanted = true;
    double widthMm = 22;    // common practice: 20 to 25
    double turningMm = 20;  // at each end
    bool operator==(const WaistTapeChoices&) const = default;
};

struct BindingChoices {
    double finishedMm = 8;  // common practice: 6 to 12; cut width 4 x finished + 3
    double turningMm = 15;  // at each end
    bool operator==(const BindingChoices&) const = default;
};

}  // namespace coutil
