#include "core/block/panel_widths.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace coutil {
namespace {

constexpr double kFirstPanelShare = 0.21;

// How many panels, counted from behind panel 1, lie in front of the side line. Chosen so that
// panels in front and behind come out about equally wide on an average body.
double panelsBeforeSide(int panelsPerHalf) {
    switch (panelsPerHalf) {
        case 4:
            return 1.25;
        case 5:
            return 5.0 / 3;
        case 6:
            return 2;
        default:
            return 2.5;
    }
}

double sideLineMm(const Body& body, const Style& style, double referenceMm, double bustTargetMm) {
    if (!body.has(Measurement::frontBustArc) || !body.has(Measurement::bustGirth))
        return style.frontShare * referenceMm;
    return body.valueMm(Measurement::frontBustArc) / 2 * bustTargetMm /
           body.valueMm(Measurement::bustGirth);
}

std::vector<double> relativeWidths(const Style& style) {
    if (!style.panelShares.empty()) return style.panelShares;
    return std::vector<double>(static_cast<std::size_t>(style.panelsPerHalf), 1.0);
}

double firstPanelMm(const Body& body, const Style& style, double referenceMm) {
    if (body.has(Measurement::bustPointWidth)) return body.valueMm(Measurement::bustPointWidth) / 2;
    if (style.panelShares.empty()) return kFirstPanelShare * referenceMm;
    const double sum = std::accumulate(style.panelShares.begin(), style.panelShares.end(), 0.0);
    return style.panelShares.front() / sum * referenceMm;
}

}  // namespace

double PanelWidths::seamAtMm(std::size_t seam) const {
    return std::accumulate(widthMm.begin(), widthMm.begin() + static_cast<std::ptrdiff_t>(seam) + 1,
                           0.0);
}

std::size_t PanelWidths::sideSeam() const {
    std::size_t nearest = 1;
    for (std::size_t seam = 2; seam + 1 < widthMm.size(); ++seam) {
        if (std::abs(seamAtMm(seam) - sideLineMm) < std::abs(seamAtMm(nearest) - sideLineMm))
            nearest = seam;
    }
    return nearest;
}

PanelWidths panelWidths(const Body& body, const Style& style, double referenceMm,
                        double bustTargetMm) {
    PanelWidths widths;
    widths.sideLineMm = sideLineMm(body, style, referenceMm, bustTargetMm);
    const std::vector<double> relative = relativeWidths(style);
    const double firstMm = firstPanelMm(body, style, referenceMm);
    const double before = panelsBeforeSide(style.panelsPerHalf);
    const auto partBefore = [&](std::size_t panel) {  // of panel 1 + panel, how much lies in front
        return std::clamp(before - static_cast<double>(panel - 1), 0.0, 1.0);
    };
    double frontUnits = 0;
    double backUnits = 0;
    for (std::size_t panel = 1; panel < relative.size(); ++panel) {
        frontUnits += relative[panel] * partBefore(panel);
        backUnits += relative[panel] * (1 - partBefore(panel));
    }
    const double frontUnitMm = (widths.sideLineMm - firstMm) / frontUnits;
    const double backUnitMm = (referenceMm - widths.sideLineMm) / backUnits;
    widths.widthMm.push_back(firstMm);
    for (std::size_t panel = 1; panel < relative.size(); ++panel) {
        widths.widthMm.push_back(relative[panel] * (partBefore(panel) * frontUnitMm +
                                                    (1 - partBefore(panel)) * backUnitMm));
    }
    return widths;
}

}  // namespace coutil
