#include "core/alterations/read_marks.h"

#include <algorithm>
#include <string>
#include <utility>
#include <variant>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/find_places.h"
#include "core/alterations/seam_position_at.h"

namespace coutil {
namespace {

template <class Kind>
Kind& changeOf(Asked& asked) {
    return std::get<Kind>(asked.alteration.change);
}

class MarkReader {
  public:
    MarkReader(std::span<const Mark> marks, const Pattern& pattern)
        : marks_(marks), pattern_(pattern) {}

    // Everything the marks ask for, without ids; problems for those that have no place.
    std::vector<Asked> asked(Problems& problems) {
        for (const Mark& mark : marks_) {
            if (!mark.isOn || isNote(mark.kind)) continue;
            if (!take(mark)) {
                problems.push_back({.code = ProblemCode::markUnfit,
                                    .subject = std::string(keyOf(mark.kind)),
                                    .detail = placeNameOf(mark.place)});
            }
        }
        return std::move(asked_);
    }

  private:
    static bool isNote(MarkKind kind) {
        return kind == MarkKind::gapes || kind == MarkKind::cutsIn || kind == MarkKind::bonePokes;
    }

    static bool isPin(MarkKind kind) {
        return kind == MarkKind::pinned || kind == MarkKind::opened;
    }

    // Positive: smaller, higher, longer, wider.
    static double signedMm(const Mark& mark) {
        const bool isOpposite = mark.kind == MarkKind::opened || mark.kind == MarkKind::lower ||
                                mark.kind == MarkKind::shorter ||
                                mark.kind == MarkKind::bustPointLower;
        return isOpposite ? -mark.amountMm : mark.amountMm;
    }

    static std::string placeNameOf(const MarkPlace& place) {
        if (const auto* seam = std::get_if<SeamPlace>(&place)) return seam->seam;
        if (const auto* tuck = std::get_if<TuckPlace>(&place)) return tuck->panel;
        if (const auto* slit = std::get_if<SlitPlace>(&place)) return slit->panel;
        if (const auto* height = std::get_if<HeightPlace>(&place)) return height->level;
        if (const auto* line = std::get_if<OnLinePlace>(&place))
            return line->at.seam.empty() ? line->at.panel : line->at.seam;
        return {};
    }

    bool take(const Mark& mark) {
        switch (mark.kind) {
            case MarkKind::bustPointHigher:
            case MarkKind::bustPointLower:
            case MarkKind::bustPointWider:
                return takeBustPoint(mark);
            case MarkKind::longer:
            case MarkKind::shorter:
                return takeLength(mark);
            case MarkKind::raise:
            case MarkKind::lower:
                return takeLine(mark);
            default:
                return isPin(mark.kind) && takePin(mark);
        }
    }

    bool takePin(const Mark& mark) {
        if (const auto* seam = std::get_if<SeamPlace>(&mark.place)) return takeOnSeam(mark, *seam);
        if (const auto* tuck = std::get_if<TuckPlace>(&mark.place)) return takeTuck(mark, *tuck);
        if (const auto* slit = std::get_if<SlitPlace>(&mark.place)) return takeSlit(mark, *slit);
        return false;
    }

    bool takeOnSeam(const Mark& mark, const SeamPlace& place) {
        const ShapeSeam one{.seam = place.seam, .amounts = {{place.positionMm, signedMm(mark)}}};
        if (!checkShapeSeam(pattern_, mark.side, one).empty()) return false;
        for (const BodySide side : sidesOf(mark, place.seam)) {
            Asked& asked = shape(place.seam, side, 0.5, false);
            changeOf<ShapeSeam>(asked).amounts.push_back(one.amounts.front());
            note(asked, mark);
        }
        return true;
    }

    // A seam with one-sided readings has a curve for each side; readings of both are in each.
    [[nodiscard]] std::vector<BodySide> sidesOf(const Mark& mark, const std::string& seam) const {
        const bool hasOneSided = std::ranges::any_of(marks_, [&](const Mark& other) {
            const auto* place = std::get_if<SeamPlace>(&other.place);
            return other.isOn && isPin(other.kind) && place && place->seam == seam &&
                   other.side != BodySide::both;
        });
        if (mark.side == BodySide::both && hasOneSided) return {BodySide::left, BodySide::right};
        return {mark.side};
    }

    Asked& shape(const std::string& seam, BodySide side, double frontPart, bool isTuck) {
        for (Asked& asked : asked_) {
            const auto* change = std::get_if<ShapeSeam>(&asked.alteration.change);
            if (change && change->seam == seam && asked.alteration.side == side &&
                asked.isTuck == isTuck && change->frontPart == frontPart)
                return asked;
        }
        return added(side, ShapeSeam{.seam = seam, .amounts = {}, .frontPart = frontPart}, isTuck);
    }

    // Half of a tuck comes off each long edge of its panel.
    bool takeTuck(const Mark& mark, const TuckPlace& place) {
        const auto panels = panelsNamed(pattern_, place.panel, mark.side);
        if (panels.empty()) return false;
        const Panel& panel = pattern_.panels[panels.front()];
        const auto edges = longEdgesOf(panel);
        if (!edges) return false;
        const auto front = seamPositionAtHeight(panel.edges[edges->front], place.heightMm);
        const auto back = seamPositionAtHeight(panel.edges[edges->back], place.heightMm);
        if (!front || !back) return false;
        takeTuckEdge(mark, {panels.front(), edges->front}, *front);
        takeTuckEdge(mark, {panels.front(), edges->back}, *back);
        return true;
    }

    void takeTuckEdge(const Mark& mark, const EdgeRef& edge, double positionMm) {
        const Seam* seam = seamOf(pattern_, edge);
        const bool isCentre = isCentreName(edgeAt(pattern_, edge).name);
        const std::string name = isCentre || !seam ? edgeAt(pattern_, edge).name : seam->name;
        const double frontPart = isCentre || !seam ? 0.5 : seam->front == edge ? 1 : 0;
        // At a closure an amount on both sides is shared by the two halves.
        const double share = isCentre && mark.side == BodySide::both ? 1 : 0.5;
        Asked& asked = shape(name, mark.side, frontPart, true);
        changeOf<ShapeSeam>(asked).amounts.push_back({positionMm, share * signedMm(mark)});
        note(asked, mark);
    }

    bool takeSlit(const Mark& mark, const SlitPlace& place) {
        if (panelsNamed(pattern_, place.panel, mark.side).empty()) return false;
        OpenPanel change{.panel = place.panel,
                         .mouth = {std::string(keyOf(place.from)), place.alongMm},
                         .slitLengthMm = place.lengthMm,
                         .amountMm = -signedMm(mark)};
        note(added(mark.side, std::move(change), false), mark);
        return true;
    }

    [[nodiscard]] bool isOnPattern(const LinePlace& place, BodySide side) const {
        if (!place.seam.empty()) {
            return !seamsNamed(pattern_, place.seam, side).empty() ||
                   (isCentreName(place.seam) && !edgesNamed(pattern_, place.seam, side).empty());
        }
        return !panelsNamed(pattern_, place.panel, side).empty();
    }

    bool takeLine(const Mark& mark) {
        const auto* place = std::get_if<OnLinePlace>(&mark.place);
        if (!place || !isOnPattern(place->at, mark.side)) return false;
        const LineAmount amount{place->at, signedMm(mark)};
        for (Asked& asked : asked_) {
            auto* change = std::get_if<ReshapeEdge>(&asked.alteration.change);
            if (!change || change->line != place->line || asked.alteration.side != mark.side)
                continue;
            change->amounts.push_back(amount);
            note(asked, mark);
            return true;
        }
        note(added(mark.side, ReshapeEdge{.line = place->line, .amounts = {amount}}, false), mark);
        return true;
    }

    [[nodiscard]] bool hasLevel(const std::string& name) const {
        return std::ranges::find(pattern_.levels, name, &Level::name) != pattern_.levels.end();
    }

    bool takeLength(const Mark& mark) {
        const auto* place = std::get_if<HeightPlace>(&mark.place);
        if (!place || (!place->level.empty() && !hasLevel(place->level))) return false;
        note(added(mark.side, ChangeLength{.at = *place, .amountMm = signedMm(mark)}, false), mark);
        return true;
    }

    bool takeBustPoint(const Mark& mark) {
        constexpr const char* kBust = "bust";
        if (!hasLevel(kBust)) return false;
        const auto found = std::ranges::find_if(asked_, [&](const Asked& asked) {
            return std::holds_alternative<MoveLevel>(asked.alteration.change) &&
                   asked.alteration.side == mark.side;
        });
        Asked& asked =
            found != asked_.end() ? *found : added(mark.side, MoveLevel{.level = kBust}, false);
        auto& change = changeOf<MoveLevel>(asked);
        (mark.kind == MarkKind::bustPointWider ? change.widerMm : change.upMm) += signedMm(mark);
        note(asked, mark);
        return true;
    }

    Asked& added(BodySide side, Change change, bool isTuck) {
        Asked asked;
        asked.alteration.side = side;
        asked.alteration.change = std::move(change);
        asked.isTuck = isTuck;
        return asked_.emplace_back(std::move(asked));
    }

    static void note(Asked& asked, const Mark& mark) {
        Alteration& alteration = asked.alteration;
        alteration.marks.push_back(mark.id);
        if (mark.note.empty()) return;
        alteration.why += (alteration.why.empty() ? "" : "; ") + mark.note;
    }

    std::span<const Mark> marks_;
    const Pattern& pattern_;
    std::vector<Asked> asked_;
};

}  // namespace

std::vector<Asked> readMarks(std::span<const Mark> marks, const Pattern& pattern,
                             std::vector<Problem>& problems) {
    return MarkReader(marks, pattern).asked(problems);
}

}  // namespace coutil
