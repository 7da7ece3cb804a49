#include "core/block/corset_frame.h"

#include <algorithm>
#include <cmath>

#include "core/block/draft_corset.h"

namespace coutil {
namespace {

std::vector<SuppressionCurve> suppressionCurves(const std::vector<LevelRow>& levels,
                                                const Style& style, double referenceMm) {
    std::vector<double> heightsMm;
    std::vector<std::vector<double>> shares;
    for (const LevelRow& level : levels) {
        heightsMm.push_back(level.heightMm);
        shares.push_back(seamSharesInForce(style, level.id));
    }
    const FairCurveSolver solver(heightsMm);
    std::vector<SuppressionCurve> curves;
    for (std::size_t seam = 0; seam < shares.front().size(); ++seam) {
        std::vector<double> valuesMm;
        for (std::size_t l = 0; l < levels.size(); ++l)
            valuesMm.push_back(shares[l][seam] * (referenceMm - levels[l].halfWidthMm()));
        curves.push_back(solver.through(valuesMm));
    }
    return curves;
}

double frontPartOf(const Style& style, std::size_t seam) {
    const auto found = style.frontPart.find(seamName(seam));
    return found == style.frontPart.end() ? 0.5 : found->second;
}

double curveWidth(const CorsetFrame& frame, std::size_t panel, double heightMm) {
    double widthMm = frame.widths.widthMm[panel];
    if (panel > 0)
        widthMm -= (1 - frame.frontPart[panel - 1]) * frame.curves[panel - 1].valueMmAt(heightMm);
    if (panel < frame.seamCount())
        widthMm -= frame.frontPart[panel] * frame.curves[panel].valueMmAt(heightMm);
    return widthMm;
}

}  // namespace

std::string seamName(std::size_t seam) {
    return std::to_string(seam + 1) + "-" + std::to_string(seam + 2);
}

Outcome<CorsetFrame> corsetFrame(const Body& body, const Style& style) {
    auto levels = levelTable(body, style);
    if (!levels) return Outcome<CorsetFrame>::failed(std::move(levels.problems));
    const auto bust = std::ranges::find(*levels, LevelId::bust, &LevelRow::id);
    const double referenceMm = bust->halfWidthMm();
    CorsetFrame frame;
    frame.widths = panelWidths(body, style, referenceMm, bust->targetMm);
    frame.curves = suppressionCurves(*levels, style, referenceMm);
    frame.levels = std::move(*levels);
    for (std::size_t seam = 0; seam < frame.curves.size(); ++seam) {
        const double alpha = frontPartOf(style, seam);
        frame.frontPart.push_back(alpha);
        frame.frontEdges.push_back(
            seamEdge(frame.curves[seam], frame.widths.widthMm[seam], -alpha));
        frame.backEdges.push_back(seamEdge(frame.curves[seam], 0, 1 - alpha));
    }
    return frame;
}

double frameWidthMm(const CorsetFrame& frame, std::size_t panel, double heightMm) {
    return curveWidth(frame, panel, heightMm);
}

NarrowPlace narrowestPlace(const CorsetFrame& frame, std::size_t panel, double fromMm,
                           double toMm) {
    NarrowPlace narrowest{curveWidth(frame, panel, fromMm), fromMm};
    const auto look = [&](double heightMm) {
        if (heightMm <= fromMm || heightMm > toMm) return;
        const double widthMm = curveWidth(frame, panel, heightMm);
        if (widthMm < narrowest.widthMm) narrowest = {widthMm, heightMm};
    };
    look(toMm);
    // All curves of a block share their knots, so the width is one cubic on each piece. Its
    // extremes are where the slope, a parabola through three of its values, is 0.
    const auto& knots = frame.curves.front().knots;
    for (std::size_t k = 0; k + 1 < knots.size(); ++k) {
        const double y0 = knots[k].heightMm;
        const double h = knots[k + 1].heightMm - y0;
        const auto width = [&](double t) { return curveWidth(frame, panel, y0 + t * h); };
        const double w0 = width(0);
        const double w1 = width(1.0 / 3) - w0;
        const double w2 = width(2.0 / 3) - w0;
        const double w3 = width(1) - w0;
        // w(t) - w0 = a t + b t^2 + c t^3 through the values at 1/3, 2/3 and 1.
        const double c = 13.5 * (w1 - w2) + 4.5 * w3;
        const double b = 18 * w2 - 22.5 * w1 - 4.5 * w3;
        const double a = w3 - b - c;
        look(y0);
        const double root = b * b - 3 * a * c;
        if (root < 0) continue;
        // The smaller root in the form that also serves c near 0.
        for (const double sign : {-1.0, 1.0}) {
            const double below = b + sign * std::sqrt(root);
            if (below != 0) look(y0 + std::clamp(-a / below, 0.0, 1.0) * h);
        }
    }
    return narrowest;
}

}  // namespace coutil
