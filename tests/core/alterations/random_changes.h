#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "core/alterations/find_places.h"
#include "core/measurements/body.h"
#include "core/pattern/pattern.h"
#include "tests/bodies/ansur_bodies.h"
#include "tests/core/alterations/drafted.h"

// Seeded random alterations of every kind, with figures as fittings ask for them, over many bodies.
namespace coutil::samples {

// Corsets of every `every`th woman of the survey, with all shapes of edges and closures in turn.
inline std::vector<Pattern> surveyCorsets(std::size_t every) {
    std::vector<Pattern> found;
    const auto sets = bodies::ansurBodies();
    for (std::size_t b = 0; b < sets.size(); b += every) {
        const auto body = completeBody(sets[b]);
        if (!body) continue;
        const std::size_t i = b / every;
        Style style;
        style.panelsPerHalf = 4 + static_cast<int>(i % 4);
        style.topEdge.shape = static_cast<TopShape>(i / 4 % 4);
        style.bottomEdge.shape = static_cast<BottomShape>(i / 2 % 4);
        style.front = static_cast<FrontClosure>(i % 3);
        auto pattern = draftCorset(*body, style);
        if (pattern) found.push_back(*std::move(pattern));
    }
    return found;
}

class RandomChanges {
  public:
    RandomChanges(std::uint32_t seed, const Pattern& pattern) : random_(seed), pattern_(pattern) {}

    [[nodiscard]] double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(random_()) / 4294967295.0);
    }
    [[nodiscard]] double upTo(double most) { return between(-most, most); }
    [[nodiscard]] std::size_t below(std::size_t count) { return random_() % count; }
    [[nodiscard]] BodySide side() { return static_cast<BodySide>(below(3)); }

    // Readings at least 40 mm apart, up to 16 mm: as pins sit.
    [[nodiscard]] ShapeSeam shape() {
        const bool isCentre = below(8) == 0;
        const Seam& seam = pattern_.seams[below(pattern_.seams.size())];
        const SeamLengths lengths = seamLengthsOf(edgeAt(pattern_, seam.front));
        ShapeSeam made;
        made.seam = isCentre ? "centre back" : seam.name;
        double atMm = between(-lengths.belowWaistMm, 0);
        for (std::size_t k = 1 + below(3); k > 0 && atMm < lengths.aboveWaistMm; --k) {
            made.amounts.push_back({atMm, upTo(16)});
            atMm += between(40, 80);
        }
        made.up = fade();
        made.down = fade();
        made.frontPart = below(2) == 0 ? 0.5 : between(0, 1);
        return made;
    }

    [[nodiscard]] OpenPanel hinged(bool isHingeOnLine) {
        const Panel& panel = anyPanel();
        const bool isTop = below(2) == 0;
        OpenPanel made =
            opening(panel.name, {isTop ? "top" : "bottom", along(panel, isTop)}, {}, {}, upTo(20));
        const std::size_t e = below(2) == 0 ? 1 : 3;
        made.hinge = isHingeOnLine ? EdgePlace{isTop ? "bottom" : "top", along(panel, !isTop)}
                                   : EdgePlace{panel.edges[e].name, upTo(40)};
        return made;
    }

    [[nodiscard]] OpenPanel slit() {
        const Panel& panel = anyPanel();
        const bool isTop = below(2) == 0;
        return opening(panel.name, {isTop ? "top" : "bottom", along(panel, isTop)}, {},
                       between(50, 110), upTo(20));
    }

    [[nodiscard]] ChangeLength parallel() {
        const std::size_t where = below(3);
        if (where == 0) return lengthened(atLevel("waist"), upTo(20));
        if (where == 1) return lengthened(atLevel("under_bust"), upTo(20));
        HeightPlace place;
        place.heightMm = upTo(60);
        return lengthened(place, upTo(20));
    }

    [[nodiscard]] ChangeLength tapering() {
        HeightPlace place;
        place.heightMm = upTo(40);
        const std::string seam = anySeam();
        return lengthened(place, upTo(15),
                          below(2) == 0 ? Taper{"centre back", seam} : Taper{seam, "centre front"});
    }

    [[nodiscard]] ReshapeEdge reshaped() {
        ReshapeEdge made;
        made.line = below(2) == 0 ? EdgeLine::top : EdgeLine::bottom;
        made.amounts.push_back({{.seam = anySeam()}, upTo(20)});
        if (below(3) == 0) made.amounts.push_back({{.seam = "centre front"}, upTo(20)});
        if (below(3) == 0) {
            const Panel& panel = anyPanel();
            made.amounts.push_back(
                {{.panel = panel.name, .alongMm = along(panel, made.line == EdgeLine::top)},
                 upTo(10)});
        }
        made.towardsFront = fade();
        made.towardsBack = fade();
        return made;
    }

    [[nodiscard]] MoveLevel levelMoved() {
        const std::size_t which = below(4);
        if (which == 0) return {"bust", upTo(12), upTo(20)};
        if (which == 1) return {"bust", 0, upTo(20)};
        if (which == 2) return {"under_bust", upTo(12), 0};
        return {"high_hip", upTo(12), 0};
    }

    [[nodiscard]] MoveCorner cornerMoved() {
        const Panel& panel = anyPanel();
        return {panel.name,
                panel.edges[below(2) == 0 ? 1 : 3].name,
                below(2) == 0 ? EdgeLine::top : EdgeLine::bottom,
                {upTo(12), upTo(15)}};
    }

    [[nodiscard]] MoveHandle handleMoved() {
        const Panel& panel = anyPanel();
        const Edge& edge = panel.edges[below(4)];
        const std::size_t pieces = edge.path.pieces.size();
        return {panel.name,
                edge.name,
                static_cast<int>(below(pieces)),
                1 + static_cast<int>(below(2)),
                {upTo(4), upTo(4)}};
    }

    [[nodiscard]] SplitPanel split() {
        const Panel& panel = anyPanel();
        return {panel.name, along(panel, false), along(panel, true)};
    }

    [[nodiscard]] const Panel& anyPanel() { return pattern_.panels[below(pattern_.panels.size())]; }
    [[nodiscard]] std::string anySeam() {
        return pattern_.seams[below(pattern_.seams.size())].name;
    }

  private:
    [[nodiscard]] Fade fade() {
        return below(4) == 0 ? Fade{std::nullopt} : Fade{between(30, 100)};
    }
    // In the middle half of a line.
    [[nodiscard]] double along(const Panel& panel, bool isTop) {
        const auto line = edgeNamed(panel, isTop ? "top" : "bottom");
        return lengthMm(panel.edges[*line].path) * between(0.25, 0.75);
    }

    std::mt19937 random_;
    const Pattern& pattern_;
};

// The kinds that have an inverse, by the ways they are asked for.
enum class Way {
    shapeSeam,
    hingeOnLine,
    hingeOnSeam,
    slit,
    parallel,
    tapering,
    reshape,
    moveLevel,
    moveCorner,
    moveHandle,
    split
};
inline constexpr std::size_t kWays = 11;
inline constexpr const char* kWayNames[] = {"shape_seam",
                                            "open_panel about a line",
                                            "open_panel about a seam",
                                            "open_panel by a slit",
                                            "change_length parallel",
                                            "change_length tapering",
                                            "reshape_edge",
                                            "move_level",
                                            "move_corner",
                                            "move_handle",
                                            "split_panel"};

inline Change changeOf(Way way, RandomChanges& random) {
    switch (way) {
        case Way::shapeSeam:
            return random.shape();
        case Way::hingeOnLine:
            return random.hinged(true);
        case Way::hingeOnSeam:
            return random.hinged(false);
        case Way::slit:
            return random.slit();
        case Way::parallel:
            return random.parallel();
        case Way::tapering:
            return random.tapering();
        case Way::reshape:
            return random.reshaped();
        case Way::moveLevel:
            return random.levelMoved();
        case Way::moveCorner:
            return random.cornerMoved();
        case Way::moveHandle:
            return random.handleMoved();
        case Way::split:
            return random.split();
    }
    return random.shape();
}

}  // namespace coutil::samples
