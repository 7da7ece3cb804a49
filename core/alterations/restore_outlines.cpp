#include "core/alterations/restore_outlines.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "core/alterations/apply_alterations.h"
#include "core/alterations/find_places.h"
#include "core/alterations/missing_line.h"
#include "core/alterations/missing_shape.h"
#include "core/alterations/outlines_apart.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

// Looks at one seam alone, and at everything.
constexpr int kSeamLooks = 4;
constexpr int kLooks = 48;
// How closely an edge is looked at; closer where that does not do.
constexpr double kStepMm = 3;
constexpr double kCloseStepMm = 1;
// A step that leads away is taken back and tried again with half of it, down to this.
constexpr double kLeastStep = 0.1;
// The farthest place may go away a little while all others come nearer.
constexpr double kMostAway = 8;
// Good enough to stop looking.
constexpr double kNearEnoughMm = 0.4 * tolerance::kTakenBackMm;
// What is less off than this needs no alteration of its own.
constexpr double kOffMm = 0.1 * tolerance::kTakenBackMm;

BodySide sideOf(PanelSide side) {
    if (side == PanelSide::both) return BodySide::both;
    return side == PanelSide::left ? BodySide::left : BodySide::right;
}

// What one seam, or one edge of it, is shaped by.
struct SeamPart {
    SeamToShape seam;
    std::vector<PartOfEdge> parts;
    std::vector<double> stations;
    std::vector<MissingShape> missing;
    bool isOn = false;
};

struct LinePart {
    BodySide side = BodySide::both;
    EdgeLine line = EdgeLine::top;
    std::size_t half = 0;
    std::optional<MissingLine> missing;
    bool isOn = false;
};

class Restorer {
  public:
    Restorer(const Pattern& changed, const Pattern& wanted, const std::vector<Alteration>& first)
        : changed_(changed), wanted_(wanted), first_(first) {}

    std::optional<std::vector<Alteration>> restored(const std::optional<SeamToShape>& seamFirst) {
        if (!tryOut()) return std::nullopt;
        base_ = now_;
        if (seamFirst) {
            lookAtSeam(*seamFirst, kStepMm);
            if (!isNear()) lookAtSeam(*seamFirst, kCloseStepMm);
        }
        if (!isNear()) lookAtAll();
        if (best_.apartMm > tolerance::kTakenBackMm) return std::nullopt;
        return best_.alterations;
    }

  private:
    // What has been tried, and what came of it.
    struct State {
        Pattern now;
        std::vector<SeamPart> seams;
        std::vector<LinePart> lines;
        std::vector<Alteration> alterations;
        double apartMm = std::numeric_limits<double>::infinity();
    };

    [[nodiscard]] bool isNear() const { return best_.apartMm <= kNearEnoughMm; }

    void lookAtSeam(const SeamToShape& seam, double stepMm) {
        seams_.clear();
        addSeam(seam.side, seam.like, stepMm);
        look(kSeamLooks);
    }

    // Every edge and line by itself, on top of the best so far.
    void lookAtAll() {
        takeUpBest();
        frozen_ = seams_.size();
        addEdges();
        addLines();
        best_.seams = seams_;
        best_.lines = lines_;
        look(kLooks);
    }

    void addSeam(BodySide side, const ShapeSeam& like, double stepMm) {
        SeamPart part{{side, like}, partsOf(changed_, side, like), {}, {}, false};
        if (part.parts.empty()) return;
        part.stations = shapeStations(base_, part.parts, stepMm);
        part.missing.resize(part.stations.size());
        seams_.push_back(std::move(part));
    }

    // Each long edge by itself: the one before a seam gives all, the one behind nothing, or the
    // other way round.
    void addEdges() {
        for (std::size_t p = 0; p < now_.panels.size(); ++p) {
            const auto edges = longEdgesOf(now_.panels[p]);
            if (!edges) continue;
            for (const std::size_t e : {edges->front, edges->back}) {
                const EdgeRef ref{p, e};
                ShapeSeam like;
                like.seam = edgeAt(now_, ref).name;
                const Seam* seam = seamOf(now_, ref);
                if (seam != nullptr && !isCentreName(like.seam)) {
                    like.seam = seam->name;
                    like.frontPart = seam->front == ref ? 1 : 0;
                }
                addSeam(sideOf(now_.panels[p].side), like, kStepMm);
            }
        }
    }

    void addLines() {
        for (const EdgeLine line : {EdgeLine::top, EdgeLine::bottom}) {
            const auto halves = linesOfHalves(now_, BodySide::both, line);
            for (std::size_t h = 0; h < halves.size(); ++h) {
                const PanelSide side = now_.panels[halves[h].panels.front().panel].side;
                lines_.push_back({sideOf(side), line, h, std::nullopt, false});
            }
        }
    }

    void takeUpBest() {
        now_ = best_.now;
        seams_ = best_.seams;
        lines_ = best_.lines;
    }

    void look(int most) {
        double step = 1;
        for (int k = 0; k < most && !isNear() && step >= kLeastStep; ++k) {
            takeInSeams(step, k > 0);
            takeInLines(step, k > 0);
            if (tryOut()) continue;
            takeUpBest();
            step /= 2;
        }
    }

    void takeInSeams(double step, bool isSmoothing) {
        for (std::size_t i = frozen_; i < seams_.size(); ++i) {
            SeamPart& part = seams_[i];
            auto rest =
                missingShapes(base_, now_, wanted_, part.parts, part.stations, part.missing);
            part.isOn = part.isOn || worstMm(rest) > kOffMm;
            if (!part.isOn) continue;
            if (isSmoothing) smooth(rest);
            for (std::size_t s = 0; s < rest.size(); ++s) {
                part.missing[s].mm += step * rest[s].mm;
                part.missing[s].slope += step * rest[s].slope;
            }
        }
    }

    void takeInLines(double step, bool isSmoothing) {
        for (LinePart& part : lines_) {
            const LineOfHalf half = linesOfHalves(now_, BodySide::both, part.line)[part.half];
            MissingLine rest =
                missingLine(now_, wanted_, half, part.missing ? &*part.missing : nullptr);
            part.isOn = part.isOn || rest.worstMm() > kOffMm;
            if (!part.isOn) continue;
            if (isSmoothing) rest.smooth();
            rest.scale(step);
            if (part.missing) rest.add(*part.missing);
            part.missing = std::move(rest);
        }
    }

    // Applies all there is so far and keeps it, if it comes nearer; false where it does not.
    bool tryOut() {
        std::vector<Alteration> all = first_;
        for (const SeamPart& part : seams_) {
            if (!part.isOn) continue;
            ShapeSeam shape = shapeThrough(part.seam.like, part.stations, part.missing);
            all.push_back({.id = {}, .side = part.seam.side, .change = std::move(shape)});
        }
        AlteredPattern tried = applyAlterations(changed_, all);
        if (!tried.leftOut.empty()) return false;
        for (const LinePart& part : lines_) {
            if (!part.isOn) continue;
            const Pattern& pattern = tried.pattern;
            const LineOfHalf half = linesOfHalves(pattern, BodySide::both, part.line)[part.half];
            const Alteration reshape{
                .id = {},
                .side = part.side,
                .change = reshapeThrough(pattern, half, part.line, *part.missing)};
            tried = applyAlterations(pattern, std::vector{reshape});
            if (!tried.leftOut.empty()) return false;
            all.push_back(reshape);
        }
        now_ = std::move(tried.pattern);
        const double mm = outlinesApartMm(now_, wanted_);
        if (mm < best_.apartMm) best_ = {now_, seams_, lines_, std::move(all), mm};
        return mm < kMostAway * best_.apartMm;
    }

    const Pattern& changed_;
    const Pattern& wanted_;
    const std::vector<Alteration>& first_;
    Pattern base_;  // after `first`: what ShapeSeams are read on
    Pattern now_;
    std::vector<SeamPart> seams_;
    std::size_t frozen_ = 0;  // so many of them stay as they are
    std::vector<LinePart> lines_;
    State best_;
};

}  // namespace

std::optional<std::vector<Alteration>> restoring(const Pattern& changed, const Pattern& wanted,
                                                 const std::vector<Alteration>& first,
                                                 const std::optional<SeamToShape>& seamFirst) {
    return Restorer(changed, wanted, first).restored(seamFirst);
}

}  // namespace coutil
