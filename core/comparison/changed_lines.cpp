#include "core/comparison/changed_lines.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kEveryMm = 2;
// Stretches nearer to each other than this are one.
constexpr double kTogetherMm = 12;

Path shifted(const Path& path, const Vector& shift) {
    return placed(path, Placement{0, shift, false});
}

const Edge* edgeNamed(const Panel& panel, const std::string& name) {
    const auto found = std::ranges::find(panel.edges, name, &Edge::name);
    return found == panel.edges.end() ? nullptr : &*found;
}

// One edge against the line of the other pattern, both in one frame.
class EdgeAgainst {
  public:
    EdgeAgainst(const Path& path, const Path& other) : path_(path), other_(other) {}

    [[nodiscard]] std::vector<ChangedStretch> stretches() {
        double doneMm = 0;
        for (const Cubic& piece : path_.pieces) {
            const double lengthOfPiece = lengthMm(piece);
            // Untouched stretches are the same to the bit: no need to look.
            if (std::ranges::find(other_.pieces, piece) == other_.pieces.end()) {
                walk(doneMm, doneMm + lengthOfPiece);
            } else {
                close(doneMm);
            }
            doneMm += lengthOfPiece;
        }
        close(doneMm);
        return std::move(found_);
    }

  private:
    [[nodiscard]] double offMm(double atMm) const {
        return closestOn(other_, pointAtLength(path_, atMm)).distanceMm;
    }
    [[nodiscard]] bool isOff(double atMm) const { return offMm(atMm) > tolerance::kChangedLineMm; }

    void walk(double fromMm, double toMm) {
        const int steps = std::max(1, static_cast<int>(std::ceil((toMm - fromMm) / kEveryMm)));
        for (int i = 0; i <= steps; ++i) visit(fromMm + (toMm - fromMm) * i / steps);
    }

    void visit(double atMm) {
        const double off = offMm(atMm);
        if (off <= tolerance::kChangedLineMm) {
            close(atMm);
            lastSameMm_ = atMm;
            return;
        }
        if (!isOpen_) open(atMm);
        if (off >= found_.back().farthestMm) {
            found_.back().farthestMm = off;
            found_.back().farthestAt = pointAtLength(path_, atMm);
        }
        lastOffMm_ = atMm;
    }

    // Between a place on the line and one off it.
    [[nodiscard]] double whereItParts(double sameMm, double offMm) const {
        while (std::abs(offMm - sameMm) > tolerance::kCompareSearchMm) {
            const double middle = (sameMm + offMm) / 2;
            (isOff(middle) ? offMm : sameMm) = middle;
        }
        return sameMm;
    }

    void open(double atMm) {
        isOpen_ = true;
        const double from = lastSameMm_ ? whereItParts(*lastSameMm_, atMm) : atMm;
        if (!found_.empty() && from - found_.back().toMm < kTogetherMm) return;
        found_.push_back({.edge = 0, .fromMm = from, .toMm = from});
    }

    void close(double sameMm) {
        if (isOpen_) found_.back().toMm = isOff(sameMm) ? sameMm : whereItParts(sameMm, lastOffMm_);
        isOpen_ = false;
        lastSameMm_ = sameMm;
    }

    const Path& path_;
    const Path& other_;
    std::vector<ChangedStretch> found_;
    std::optional<double> lastSameMm_;
    double lastOffMm_ = 0;
    bool isOpen_ = false;
};

// What of `panel` lies off `other`; `shift` lays the panel on the other.
std::vector<ChangedStretch> stretchesOf(const Panel& panel, const Panel& other,
                                        const Vector& shift) {
    std::vector<ChangedStretch> all;
    for (std::size_t i = 0; i < panel.edges.size(); ++i) {
        const Edge& edge = panel.edges[i];
        if (edge.path.isEmpty()) continue;
        const Edge* same = edgeNamed(other, edge.name);
        if (same == nullptr || same->path.isEmpty()) {
            all.push_back({.edge = i, .fromMm = 0, .toMm = lengthMm(edge.path)});
            continue;
        }
        const Path path = shift.isZero() ? edge.path : shifted(edge.path, shift);
        auto found = EdgeAgainst(path, same->path).stretches();
        if (edge.waistMarkAtMm && same->waistMarkAtMm) {
            const double at = *edge.waistMarkAtMm;
            const Point was = pointAtLength(same->path, *same->waistMarkAtMm);
            const bool isTold = std::ranges::any_of(
                found, [&](const ChangedStretch& s) { return s.fromMm <= at && at <= s.toMm; });
            const double off = (pointAtLength(path, at) - was).norm();
            if (!isTold && off > tolerance::kChangedLineMm)
                found.push_back({.edge = i, .fromMm = at, .toMm = at});
        }
        for (ChangedStretch& stretch : found) {
            stretch.edge = i;
            if (stretch.farthestMm > 0) stretch.farthestAt -= shift;
            all.push_back(stretch);
        }
    }
    return all;
}

const LevelLine* levelOf(const Panel& panel, const std::string& key) {
    const auto found = std::ranges::find(panel.levels, key, &LevelLine::level);
    return found == panel.levels.end() ? nullptr : &*found;
}

// A level line is level: its ends moving along it with the edges are told by those.
std::vector<std::string> movedLevels(const Panel& a, const Panel& b, const Vector& shiftOfB) {
    std::vector<std::string> keys;
    for (const LevelLine& old : a.levels) {
        const LevelLine* now = levelOf(b, old.level);
        if (now == nullptr ||
            std::abs(now->front.y() + shiftOfB.y() - old.front.y()) > tolerance::kChangedLineMm) {
            keys.push_back(old.level);
        }
    }
    for (const LevelLine& now : b.levels) {
        if (levelOf(a, now.level) == nullptr) keys.push_back(now.level);
    }
    return keys;
}

}  // namespace

std::vector<PanelChange> changedLines(const Pattern& a, const Pattern& b, Registration how) {
    std::vector<PanelChange> changes;
    for (const PanelComparison& pair : comparePatterns(a, b, how).panels) {
        PanelChange change{.name = pair.name,
                           .side = pair.side,
                           .inA = pair.inA,
                           .inB = pair.inB,
                           .shiftOfB = pair.shiftOfB,
                           .ofA = {},
                           .ofB = {},
                           .movedLevels = {}};
        if (pair.inA && pair.inB) {
            const Panel& old = a.panels[*pair.inA];
            const Panel& now = b.panels[*pair.inB];
            change.ofA = stretchesOf(old, now, -pair.shiftOfB);
            change.ofB = stretchesOf(now, old, pair.shiftOfB);
            change.movedLevels = movedLevels(old, now, pair.shiftOfB);
        }
        changes.push_back(std::move(change));
    }
    return changes;
}

}  // namespace coutil
