// The alterations that take another one back.
#include <optional>
#include <utility>
#include <variant>

#include "core/alterations/apply_alterations.h"
#include "core/alterations/opposite_change.h"
#include "core/alterations/outlines_apart.h"
#include "core/alterations/restore_outlines.h"
#include "core/alterations/whole_pattern.h"

namespace coutil {
namespace {

bool hasInverse(const Change& change) {
    return !std::holds_alternative<JoinPanels>(change) &&
           !std::holds_alternative<MakeSymmetric>(change) &&
           !std::holds_alternative<ChangeStyle>(change) &&
           !std::holds_alternative<TakeMeasurements>(change);
}

// Nothing where the opposite change does not fit, for then all is left to corrections.
std::vector<Alteration> fitting(const Pattern& changed, BodySide side, std::optional<Change> back) {
    if (!back) return {};
    std::vector<Alteration> one{{.id = {}, .side = side, .change = *std::move(back)}};
    if (!applyAlterations(changed, one).leftOut.empty()) return {};
    return one;
}

}  // namespace

std::optional<std::vector<Alteration>> inverseOf(const Alteration& alteration,
                                                 const Pattern& before) {
    if (!hasInverse(alteration.change)) return std::nullopt;
    Alteration change = alteration;
    change.isOn = true;
    const Pattern wanted = change.side == BodySide::both ? before : wholeOf(before);
    const AlteredPattern altered = applyAlterations(wanted, std::vector{change});
    if (!altered.leftOut.empty()) return std::nullopt;
    const Pattern& changed = altered.pattern;
    std::optional<SeamToShape> seam;
    if (const auto* shape = std::get_if<ShapeSeam>(&change.change))
        seam = SeamToShape{change.side, *shape};
    const std::vector<Alteration> first =
        fitting(changed, change.side, oppositeOf(wanted, changed, change.side, change.change));
    auto list = restoring(changed, wanted, first, seam);
    if (list || first.empty()) return list;
    return restoring(changed, wanted, {}, seam);
}

}  // namespace coutil
