#include <limits>

#include "core/making_up/channel.h"
#include "core/pattern/bows.h"

namespace coutil {
namespace {

double seamPositionMm(const Edge& edge, double alongMm) {
    const double fromMarkMm = alongMm - edge.waistMarkAtMm.value_or(0);
    return edge.runsUp ? fromMarkMm : -fromMarkMm;
}

void takeEdge(const Panel& panel, const Edge& edge, double stretchMm, SeamStraightness& worst) {
    for (const Bow& bow : bowsOf(edge.path, stretchMm)) {
        if (bow.chordErrorMm > worst.chordErrorMm) {
            worst.chordErrorMm = bow.chordErrorMm;
            worst.chordErrorAtMm = seamPositionMm(edge, bow.alongMm);
            worst.chordErrorPanel = panel.name;
        }
        if (bow.curvaturePerMm * worst.radiusMm > 1) {
            worst.radiusMm = 1 / bow.curvaturePerMm;
            worst.radiusAtMm = seamPositionMm(edge, bow.curvatureAlongMm);
            worst.radiusPanel = panel.name;
        }
    }
}

}  // namespace

std::vector<SeamStraightness> straightnessOf(const Pattern& pattern, const StraightSeamRule& rule) {
    std::vector<SeamStraightness> all;
    all.reserve(pattern.seams.size());
    for (const Seam& seam : pattern.seams) {
        SeamStraightness worst{.seam = seam.name,
                               .side = pattern.panels[seam.front.panel].side,
                               .radiusMm = std::numeric_limits<double>::max()};
        for (const EdgeRef* ref : {&seam.front, &seam.back}) {
            takeEdge(pattern.panels[ref->panel], edgeAt(pattern, *ref), rule.stretchMm, worst);
        }
        if (worst.radiusPanel.empty()) worst.radiusMm = std::numeric_limits<double>::infinity();
        worst.isNearlyStraight =
            worst.chordErrorMm < rule.chordErrorMm && worst.radiusMm > rule.radiusMm;
        all.push_back(std::move(worst));
    }
    return all;
}

}  // namespace coutil
