// Every kind of alteration with random figures over many bodies: what is promised of a pattern
// holds, and what is taken back is back.
#include <algorithm>
#include <array>
#include <cstdio>
#include <limits>
#include <random>

#include <gtest/gtest.h>

#include "core/alterations/outlines_apart.h"
#include "core/alterations/whole_pattern.h"
#include "core/measurements/body_relations.h"
#include "tests/bodies/ansur_bodies.h"
#include "tests/core/alterations/drafted.h"
#include "tests/core/alterations/random_changes.h"

namespace coutil {
namespace {

class ChangeMaker {
  public:
    explicit ChangeMaker(unsigned seed) : random_(seed) {}

    // Figures as a fitting asks for them.
    Change of(std::size_t kind, const Pattern& pattern) {
        const std::size_t p = pick(pattern.panels.size());
        const Panel& panel = pattern.panels[p];
        const std::string seam = pattern.seams[pick(pattern.seams.size())].name;
        switch (kind) {
            case 0: {
                OpenPanel change =
                    samples::opening(panel.name, {"bottom", share(panel, 0)}, {}, {}, mm(12));
                const std::size_t where = pick(3);
                if (where == 0) change.hinge = EdgePlace{"top", share(panel, 2)};
                if (where == 1) change.hinge = EdgePlace{panel.edges[1].name, mm(30)};
                if (where == 2) change.slitLengthMm = 70 + mm(15);
                return change;
            }
            case 1:
                return samples::lengthened(samples::atLevel(pick(2) == 0 ? "waist" : "under_bust"),
                                           mm(14), {});
            case 2:
                return samples::lengthened(HeightPlace{{}, mm(30)}, mm(10),
                                           Taper{"centre back", "2-3"});
            case 3:
                return ReshapeEdge{pick(2) == 0 ? EdgeLine::top : EdgeLine::bottom,
                                   {{{.seam = seam}, mm(12)}},
                                   Fade{70 + mm(20)},
                                   Fade{70 + mm(20)}};
            case 4:
                return pick(2) == 0 ? MoveLevel{"bust", mm(8), mm(8)}
                                    : MoveLevel{"under_bust", mm(8), 0};
            case 5:
                return MoveCorner{panel.name,
                                  panel.edges[1].name,
                                  pick(2) == 0 ? EdgeLine::top : EdgeLine::bottom,
                                  {mm(5), mm(8)}};
            case 6:
                return MoveHandle{panel.name,
                                  panel.edges[1].name,
                                  static_cast<int>(pick(panel.edges[1].path.pieces.size())),
                                  2,
                                  {mm(2), mm(3)}};
            case 7:
                return SplitPanel{panel.name, share(panel, 0), share(panel, 2)};
            default:
                return JoinPanels{seam};
        }
    }

    double mm(double most) { return std::uniform_real_distribution<double>(-most, most)(random_); }
    std::size_t pick(std::size_t count) { return random_() % count; }

  private:
    double share(const Panel& panel, std::size_t edge) {
        return lengthMm(panel.edges[edge].path) * (0.5 + mm(0.1));
    }
    std::mt19937 random_;
};
constexpr std::size_t kKinds = 9;

std::vector<Pattern> patterns() {
    std::vector<Pattern> found;
    constexpr std::size_t kEvery = 25;
    const auto bodies = bodies::ansurBodies();
    for (std::size_t b = 0; b < bodies.size(); b += kEvery) {
        const auto body = completeBody(bodies[b]);
        if (!body) continue;
        Style style;
        style.panelsPerHalf = 4 + static_cast<int>(b / kEvery % 4);
        auto pattern = draftCorset(*body, style);
        if (pattern) found.push_back(*std::move(pattern));
    }
    return found;
}

std::string told(const std::vector<Problem>& problems) {
    std::string text;
    for (const Problem& problem : problems) {
        text += keyOf(problem.code);
        text += " " + problem.subject + " " + problem.detail + " " + problem.panel;
        for (const Figure& figure : problem.figures)
            text += " " + figure.name + "=" + std::to_string(figure.value);
        text += "; ";
    }
    return text;
}

TEST(KindsOverBodies, whatAPatternPromisesStillHolds) {
    std::size_t count = 0;
    std::size_t leftOut = 0;
    for (const Pattern& pattern : patterns()) {
        ChangeMaker make(static_cast<unsigned>(count));
        for (std::size_t kind = 0; kind < kKinds; ++kind) {
            const Change change = make.of(kind, pattern);
            const auto side = static_cast<BodySide>(make.pick(3));
            const AlteredPattern after = applyAlterations(
                pattern, std::vector{Alteration{.id = "x", .side = side, .change = change}});
            ++count;
            leftOut += after.leftOut.size();
            for (const Problem& problem : samples::brokenPromises(after.pattern))
                ADD_FAILURE() << kindOf(change) << " " << count << ": " << told({problem});
        }
    }
    EXPECT_GT(count, 300U);
    EXPECT_LT(leftOut, count / 8);
}

// Every kind that has an inverse, on all sides. Corrections may not come near enough (see
// inverseOf): at most one in three hundred.
TEST(KindsOverBodies, whatIsTakenBackIsBack) {
    std::size_t applied = 0;
    std::size_t back = 0;
    std::array<double, samples::kWays> worstMm{};
    std::string without;
    std::uint32_t seed = 0;
    for (const Pattern& pattern : samples::surveyCorsets(6)) {
        for (std::size_t way = 0; way < samples::kWays; ++way) {
            samples::RandomChanges random(++seed, pattern);
            const Change change = changeOf(static_cast<samples::Way>(way), random);
            const Alteration one{.id = "x", .side = random.side(), .change = change};
            const AlteredPattern after = applyAlterations(pattern, std::vector{one});
            if (!after.leftOut.empty()) continue;
            ++applied;
            const auto list = inverseOf(one, pattern);
            if (!list) {
                without +=
                    std::string(" ") + samples::kWayNames[way] + " " + std::to_string(seed) + ";";
                continue;
            }
            ++back;
            const AlteredPattern again = applyAlterations(after.pattern, *list);
            EXPECT_TRUE(again.leftOut.empty());
            const Pattern before = one.side == BodySide::both ? pattern : wholeOf(pattern);
            const double mm = outlinesApartMm(before, again.pattern);
            worstMm[way] = std::max(worstMm[way], mm);
            EXPECT_LT(mm, 0.05) << samples::kWayNames[way] << " " << seed;
        }
    }
    EXPECT_GT(applied, 400U);
    EXPECT_LE((applied - back) * 300, applied) << back << " of " << applied << without;
    for (std::size_t way = 0; way < samples::kWays; ++way)
        std::printf("%s: back within %.4f mm\n", samples::kWayNames[way], worstMm[way]);
    std::printf("%zu of %zu taken back; not:%s\n", back, applied, without.c_str());
}

TEST(KindsOverBodies, absurdFiguresAreRefusedWithoutHarm) {
    const Pattern pattern = samples::drafted();
    constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
    constexpr double kInf = std::numeric_limits<double>::infinity();
    for (const double x : {kNan, kInf, -kInf, 1e300, -1e6}) {
        const std::vector<Change> changes{
            samples::opening("3", {"bottom", x}, EdgePlace{"top", 30}, {}, 5),
            samples::opening("3", {"bottom", 30}, EdgePlace{"top", x}, {}, 5),
            samples::opening("3", {"bottom", 30}, EdgePlace{"top", 30}, {}, x),
            samples::opening("3", {"bottom", 30}, {}, x, 5),
            samples::lengthened(HeightPlace{{}, x}, 5, {}),
            samples::lengthened(samples::atLevel("waist"), x, {}),
            ReshapeEdge{EdgeLine::top, {{{.seam = "2-3"}, x}}, {}, {}},
            ReshapeEdge{EdgeLine::top, {{{.seam = "2-3"}, 5}}, Fade{x}, {}},
            ReshapeEdge{EdgeLine::top, {{{.panel = "2", .alongMm = x}, 5}}, {}, {}},
            MoveLevel{"bust", x, 0},
            MoveLevel{"bust", 0, x},
            MoveCorner{"2", "seam 2-3", EdgeLine::top, {x, 1}},
            MoveHandle{"2", "seam 2-3", 1, 1, {1, x}},
            SplitPanel{"2", x, 30},
            SplitPanel{"2", 30, x}};
        for (const Change& change : changes) {
            const AlteredPattern after =
                applyAlterations(pattern, std::vector{Alteration{.id = "x", .change = change}});
            EXPECT_EQ(after.leftOut.size(), 1U) << kindOf(change) << " " << x;
            EXPECT_EQ(after.pattern, pattern) << kindOf(change) << " " << x;
        }
    }
}

}  // namespace
}  // namespace coutil
