#include "core/block/default_heights.h"

#include <algorithm>

namespace coutil {
namespace {

double heightOf(const std::vector<LevelRow>& levels, LevelId id, double otherwiseMm) {
    const auto found = std::ranges::find(levels, id, &LevelRow::id);
    return found == levels.end() ? otherwiseMm : found->heightMm;
}

double valueOr(const Body& body, Measurement id, double otherwiseMm) {
    return body.has(id) ? body.valueMm(id) : otherwiseMm;
}

}  // namespace

TopDefaults topDefaults(const std::vector<LevelRow>& levels, const Body& body, TopShape shape) {
    const double bustMm = heightOf(levels, LevelId::bust, 0);
    const double armpitMm =
        std::max(valueOr(body, Measurement::waistToArmpit, 1.4 * bustMm), 1.05 * bustMm);
    const double roomMm = armpitMm - bustMm;
    // 35 to 50 mm over the bust point on a body of middle height: enough to hold, not to cut in
    // when the arms move forward.
    const double riseMm = std::clamp(0.7 * roomMm, 0.2 * armpitMm, 0.28 * armpitMm);
    TopDefaults top;
    // 25 mm under the armpit of a body of middle height.
    top.sideMm = std::max(0.86 * armpitMm, bustMm + 0.15 * roomMm);
    top.backMm = bustMm + 0.15 * roomMm;
    switch (shape) {
        case TopShape::straight: {
            const double levelMm = std::min(bustMm + 0.6 * riseMm, top.sideMm);
            return {levelMm, levelMm, levelMm, levelMm};
        }
        case TopShape::curved:
            top.frontMm = bustMm + 0.45 * riseMm;
            top.bustMm = bustMm + 0.85 * riseMm;
            return top;
        case TopShape::sweetheart:
            top.frontMm = bustMm + 0.2 * riseMm;
            top.bustMm = bustMm + riseMm;
            return top;
        case TopShape::pointed:
            top.frontMm = bustMm + 1.25 * riseMm;
            top.bustMm = bustMm + 0.75 * riseMm;
            return top;
    }
    return top;
}

BottomDefaults bottomDefaults(const std::vector<LevelRow>& levels, const Body& body,
                              BottomShape shape) {
    const double lowestMm = -levels.front().heightMm;
    const double hipMm = -heightOf(levels, LevelId::hip, -2 * lowestMm);
    const double highHipMm = -heightOf(levels, LevelId::highHip, -0.46 * hipMm);
    const double lapMm = valueOr(body, Measurement::waistToLap, 0.55 * hipMm);
    // A singer sits down between two numbers: the front stays clear of the lap.
    const double frontMm = 0.92 * lapMm;
    switch (shape) {
        case BottomShape::straight: {
            const double levelMm = std::min(1.05 * highHipMm, frontMm);
            return {levelMm, levelMm, levelMm};
        }
        case BottomShape::curved:
            return {frontMm, std::min(0.82 * highHipMm, frontMm),
                    std::min(0.95 * highHipMm, frontMm)};
        case BottomShape::pointed:
            return {1.03 * frontMm, std::min(0.7 * highHipMm, 0.7 * frontMm),
                    std::min(0.84 * highHipMm, 0.84 * frontMm)};
        case BottomShape::dipped:
            return {0.9 * frontMm, highHipMm + 0.35 * (hipMm - highHipMm),
                    std::max(1.05 * highHipMm, frontMm)};
    }
    return {};
}

}  // namespace coutil
