// The alterations that the marks of a fitting ask for, with what was set on them before.
#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "core/alterations/apply_alterations.h"
#include "core/alterations/read_marks.h"

namespace coutil {
namespace {

bool sharesMark(const Alteration& a, const Alteration& b) {
    return std::ranges::any_of(
        a.marks, [&](const std::string& id) { return std::ranges::count(b.marks, id) > 0; });
}

// Whether a change made before is the one for the same place. A split the maker has dragged does
// not make a seam another place; a tuck's does.
bool isSamePlace(const Asked& asked, const Alteration& earlier) {
    const Change& now = asked.alteration.change;
    if (now.index() != earlier.change.index()) return false;
    if (const auto* shape = std::get_if<ShapeSeam>(&now)) {
        const auto& old = std::get<ShapeSeam>(earlier.change);
        if (shape->seam != old.seam) return false;
        if (asked.isTuck) return shape->frontPart == old.frontPart;
        return (old.frontPart > 0 && old.frontPart < 1) || sharesMark(asked.alteration, earlier);
    }
    if (const auto* line = std::get_if<ReshapeEdge>(&now))
        return line->line == std::get<ReshapeEdge>(earlier.change).line;
    if (std::holds_alternative<MoveLevel>(now)) return true;
    return sharesMark(asked.alteration, earlier);
}

void keepSettings(Asked& asked, const Alteration& earlier) {
    Change& now = asked.alteration.change;
    if (auto* shape = std::get_if<ShapeSeam>(&now)) {
        const auto& old = std::get<ShapeSeam>(earlier.change);
        shape->up = old.up;
        shape->down = old.down;
        if (!asked.isTuck) shape->frontPart = old.frontPart;
    } else if (auto* line = std::get_if<ReshapeEdge>(&now)) {
        const auto& old = std::get<ReshapeEdge>(earlier.change);
        line->towardsFront = old.towardsFront;
        line->towardsBack = old.towardsBack;
    } else if (auto* length = std::get_if<ChangeLength>(&now)) {
        length->taper = std::get<ChangeLength>(earlier.change).taper;
    }
}

// Ids, fades and splits of what these marks made before.
class Remembering {
  public:
    explicit Remembering(std::span<const Alteration> previous)
        : previous_(previous), isTaken_(previous.size(), false) {}

    // Whether an id was found.
    bool remember(Asked& asked) {
        Alteration& alteration = asked.alteration;
        const auto same = find(asked, alteration.side);
        // Sides that were one before keep what was set for both.
        const auto settings = same ? same : find(asked, BodySide::both);
        if (settings) keepSettings(asked, previous_[*settings]);
        if (!same) return false;
        const Alteration& earlier = previous_[*same];
        isTaken_[*same] = true;
        alteration.id = earlier.id;
        alteration.isOn = earlier.isOn;
        if (!earlier.why.empty()) alteration.why = earlier.why;
        return true;
    }

  private:
    [[nodiscard]] std::optional<std::size_t> find(const Asked& asked, BodySide side) const {
        for (std::size_t i = 0; i < previous_.size(); ++i) {
            if (!isTaken_[i] && previous_[i].side == side && isSamePlace(asked, previous_[i]))
                return i;
        }
        return std::nullopt;
    }

    std::span<const Alteration> previous_;
    std::vector<bool> isTaken_;
};

}  // namespace

FromMarks alterationsFrom(std::span<const Mark> marks, const Pattern& pattern,
                          std::span<const Alteration> previous,
                          const std::function<std::string()>& newId) {
    FromMarks made;
    std::vector<Asked> all = readMarks(marks, pattern, made.problems);
    Remembering remembering(previous);
    for (Asked& asked : all) {
        if (!remembering.remember(asked)) asked.alteration.id = newId();
        made.alterations.push_back(std::move(asked.alteration));
    }
    return made;
}

}  // namespace coutil
