// Lengthening and shortening at a height, parallel or tapering.
#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/change_problem.h"
#include "core/alterations/find_places.h"
#include "core/alterations/height_warp.h"
#include "core/alterations/settle.h"

namespace coutil {
namespace {

constexpr const char* kKind = "change_length";
// The band that is stretched: as long as a maker would true a cut line, less where the seams are
// short.
constexpr double kBandMm = 60;
constexpr double kBandShare = 0.8;
// Of the band, the most that it may grow by: twice and a half its length.
constexpr double kMostStretch = 1.5;

// How much of the amount each long edge takes, 0..1, by panel.
struct PanelWeights {
    double front = 1;
    double back = 1;
};

// What is lengthened on the way from the waist: the height and everything on its far side.
struct Lengthening {
    double heightMm = 0;
    double amountMm = 0;
    double bandMm = 0;
    bool isUp = true;
};

// A distance beyond the height before and after lengthening by `mm` (not negative).
HeightValue lengthened(double distanceMm, double mm, double bandMm) {
    const HeightValue rise = smoothRise(distanceMm / bandMm);
    return {distanceMm + mm * rise.valueMm, 1 + mm * rise.perMm / bandMm};
}

// The way back: the distance that lengthening by `mm` would bring to `distanceMm`.
HeightValue shortened(double distanceMm, double mm, double bandMm) {
    return wayBack([&](double beforeMm) { return lengthened(beforeMm, mm, bandMm); }, distanceMm,
                   distanceMm - mm, distanceMm);
}

HeightValue moved(double heightMm, const Lengthening& change, double weight) {
    const double sign = change.isUp ? 1 : -1;
    const double beyondMm = (heightMm - change.heightMm) * sign;
    const double mm = change.amountMm * weight;
    if (beyondMm <= 0 || mm == 0) return {heightMm, 1};
    const HeightValue there =
        mm > 0 ? lengthened(beyondMm, mm, change.bandMm) : shortened(beyondMm, -mm, change.bandMm);
    return {change.heightMm + sign * there.valueMm, there.perMm};
}

HeightWarp warpOf(const Lengthening& change, double weight) {
    HeightWarp warp;
    warp.height = [change, weight](double y) { return moved(y, change, weight); };
    (change.isUp ? warp.lowestMm : warp.highestMm) = change.heightMm;
    return warp;
}

std::optional<double> heightOf(const Pattern& pattern, const HeightPlace& place) {
    if (place.level.empty()) return place.heightMm;
    const auto found = std::ranges::find(pattern.levels, place.level, &Level::name);
    if (found == pattern.levels.end()) return std::nullopt;
    return found->heightMm;
}

// Panels of one body side in their order from front to back.
using Run = std::vector<std::size_t>;

std::vector<Run> runsOf(const Pattern& pattern, BodySide side) {
    std::map<PanelSide, Run> bySide;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        if (concerns(side, pattern.panels[p].side)) bySide[pattern.panels[p].side].push_back(p);
    }
    std::vector<Run> runs;
    runs.reserve(bySide.size());
    for (auto& [panelSide, run] : bySide) runs.push_back(std::move(run));
    return runs;
}

// The name by which a taper calls the edge: that of its seam, or of the centre edge itself.
std::string callNameOf(const Pattern& pattern, const EdgeRef& ref) {
    const Seam* seam = seamOf(pattern, ref);
    return seam == nullptr ? edgeAt(pattern, ref).name : seam->name;
}

// Weights along a run, linear over the widths at the height; nothing where an end is not there or a
// panel between does not reach the height.
std::optional<std::map<std::size_t, PanelWeights>> weightsOf(const Pattern& pattern, const Run& run,
                                                             const Taper& taper, double heightMm) {
    std::vector<double> atMm{0};  // of the front edge of each panel and the last back edge
    std::optional<double> fromMm;
    std::optional<double> toMm;
    const auto look = [&](const EdgeRef& ref) {
        const std::string name = callNameOf(pattern, ref);
        if (name == taper.from) fromMm = atMm.back();
        if (name == taper.to) toMm = atMm.back();
    };
    for (const std::size_t p : run) {
        const auto edges = longEdgesOf(pattern.panels[p]);
        const auto widthMm = widthAtHeightMm(pattern.panels[p], heightMm);
        if (!edges || !widthMm) return std::nullopt;
        look({p, edges->front});
        atMm.push_back(atMm.back() + *widthMm);
        look({p, edges->back});
    }
    if (!fromMm || !toMm || *fromMm == *toMm) return std::nullopt;
    const auto weightAt = [&](double mm) {
        return std::clamp((mm - *toMm) / (*fromMm - *toMm), 0.0, 1.0);
    };
    std::map<std::size_t, PanelWeights> weights;
    for (std::size_t i = 0; i < run.size(); ++i)
        weights[run[i]] = {weightAt(atMm[i]), weightAt(atMm[i + 1])};
    return weights;
}

struct EdgeToMove {
    EdgeRef edge;
    double weight = 1;
};

std::optional<std::vector<EdgeToMove>> edgesToMove(const Pattern& pattern, BodySide side,
                                                   const ChangeLength& change, double heightMm) {
    std::vector<EdgeToMove> found;
    for (const Run& run : runsOf(pattern, side)) {
        std::map<std::size_t, PanelWeights> weights;
        if (change.taper) {
            auto tapering = weightsOf(pattern, run, *change.taper, heightMm);
            if (!tapering) return std::nullopt;
            weights = std::move(*tapering);
        }
        for (const std::size_t p : run) {
            const auto edges = longEdgesOf(pattern.panels[p]);
            if (!edges) continue;
            const PanelWeights weight = change.taper ? weights.at(p) : PanelWeights{};
            found.push_back({{p, edges->front}, weight.front});
            found.push_back({{p, edges->back}, weight.back});
        }
    }
    return found;
}

// How far the shortest of the edges goes on beyond the height, before it is lengthened or after it
// was shortened back: the same for an amount and its opposite.
double roomMm(const Pattern& pattern, const std::vector<EdgeToMove>& edges,
              const Lengthening& change) {
    double room = kBandMm / kBandShare;
    for (const EdgeToMove& each : edges) {
        const Box box = boundsOf(edgeAt(pattern, each.edge).path);
        const double beyondMm =
            change.isUp ? box.highest.y() - change.heightMm : change.heightMm - box.lowest.y();
        room = std::min(room, beyondMm + std::min(0.0, change.amountMm * each.weight));
    }
    return room;
}

Problems checkAmount(const Lengthening& change, double room, const std::string& place) {
    const double mm = std::abs(change.amountMm);
    if (mm <= kMostStretch * kBandShare * room) return {};
    // Shortening takes from its own room.
    const double wholeRoomMm = change.amountMm < 0 ? room + mm : room;
    const double share = kMostStretch * kBandShare;
    const double limitMm =
        change.amountMm < 0 ? wholeRoomMm * share / (1 + share) : wholeRoomMm * share;
    return tooLarge(kKind, place, mm, std::max(0.0, limitMm));
}

std::string placeName(const HeightPlace& place) {
    if (!place.level.empty()) return place.level;
    return std::to_string(static_cast<int>(std::lround(place.heightMm))) + " mm";
}

// Levels are lines around the body: they move where every panel moves alike.
void moveLevels(const Pattern& before, BodySide side, const ChangeLength& change,
                const Lengthening& how, Pattern& pattern) {
    if (change.taper || (side != BodySide::both && before.panels.front().side != PanelSide::both))
        return;
    for (Level& level : pattern.levels) level.heightMm = moved(level.heightMm, how, 1).valueMm;
}

}  // namespace

Problems changeLength(Pattern& pattern, BodySide side, const ChangeLength& change) {
    if (!isSoundMm(change.amountMm) || !isSoundMm(change.at.heightMm))
        return badValue(kKind, placeName(change.at));
    const auto heightMm = heightOf(pattern, change.at);
    if (!heightMm) return unfit(kKind, change.at.level);
    if (change.amountMm == 0) return {};
    const auto edges = edgesToMove(pattern, side, change, *heightMm);
    if (!edges) return unfit(kKind, change.taper->from + " / " + change.taper->to);
    Lengthening how{*heightMm, change.amountMm, 0, *heightMm >= 0};
    const double room = roomMm(pattern, *edges, how);
    if (room <= 0 && change.amountMm > 0) return unfit(kKind, placeName(change.at));
    if (Problems problems = checkAmount(how, room, placeName(change.at)); !problems.empty())
        return problems;
    how.bandMm = kBandShare * room;

    Pattern changed = pattern;
    std::vector<WantedLengths> wanted;
    for (const auto& [ref, weight] : *edges) {
        if (weight == 0) continue;
        Edge& edge = changed.panels[ref.panel].edges[ref.edge];
        SeamLengths lengths = seamLengthsOf(edge);
        (how.isUp ? lengths.aboveWaistMm : lengths.belowWaistMm) += weight * how.amountMm;
        edge.path = warped(edge.path, warpOf(how, weight));
        wanted.push_back({ref, lengths});
    }
    moveLevels(pattern, side, change, how, changed);
    settle(pattern, changed, wanted);
    pattern = std::move(changed);
    return {};
}

}  // namespace coutil
