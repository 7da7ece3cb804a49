#include <optional>

#include "core/geometry/tolerances.h"
#include "core/pattern/bows.h"
#include "core/pattern/every_check.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

bool isTooCurved(const Bow& bow) {
    return bow.chordErrorMm >= tolerance::kChannelChordMm &&
           bow.curvaturePerMm * tolerance::kChannelRadiusMm >= 1;
}

// The worst of all stretches of 100 mm that are too curved; of a shorter edge the whole.
std::optional<Bow> worstBow(const Path& path) {
    std::optional<Bow> worst;
    for (const Bow& bow : bowsOf(path, tolerance::kChannelStretchMm)) {
        if (isTooCurved(bow) && (!worst || bow.chordErrorMm > worst->chordErrorMm)) worst = bow;
    }
    return worst;
}

Problem problemOf(const Seam& seam, const Panel& panel, const Edge& edge, const Bow& bow) {
    Problem problem{.code = ProblemCode::seamTooCurved,
                    .severity = Severity::note,
                    .subject = seam.name,
                    .panel = panelKey(panel),
                    .at = bow.at,
                    .figures = {{"value", bow.chordErrorMm},
                                {"limit", tolerance::kChannelChordMm},
                                {"radius", 1 / bow.curvaturePerMm}}};
    if (edge.waistMarkAtMm) {
        const double fromMarkMm = bow.alongMm - *edge.waistMarkAtMm;
        problem.figures.push_back({"position", edge.runsUp ? fromMarkMm : -fromMarkMm});
    }
    return problem;
}

}  // namespace

std::vector<Problem> checkChannels(const Pattern& pattern) {
    std::vector<Problem> problems;
    for (const Seam& seam : pattern.seams) {
        const EdgeRef* worstEdge = nullptr;
        std::optional<Bow> worst;
        for (const EdgeRef* ref : {&seam.front, &seam.back}) {
            const auto bow = worstBow(edgeAt(pattern, *ref).path);
            if (!bow || (worst && bow->chordErrorMm <= worst->chordErrorMm)) continue;
            worst = bow;
            worstEdge = ref;
        }
        if (worstEdge == nullptr) continue;
        problems.push_back(
            problemOf(seam, pattern.panels[worstEdge->panel], edgeAt(pattern, *worstEdge), *worst));
    }
    return problems;
}

}  // namespace coutil
