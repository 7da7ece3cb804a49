#include "core/alterations/apply_alterations.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "core/alterations/alteration_kinds.h"
#include "core/alterations/broken_panel.h"
#include "core/alterations/named_place.h"
#include "core/alterations/whole_pattern.h"

namespace coutil {
namespace {

// One alteration, or a run of ShapeSeam alterations that are applied as one.
using Step = std::vector<std::size_t>;

// Applies one kind of change to a pattern.
struct ChangeTo {
    Pattern& pattern;
    BodySide side = BodySide::both;

    Problems operator()(const ShapeSeam& change) const { return shapeSeam(pattern, side, change); }
    Problems operator()(const MakeSymmetric& change) const {
        return makeSymmetric(pattern, side, change);
    }
    Problems operator()(const ChangeStyle&) const { return {}; }
    Problems operator()(const TakeMeasurements&) const { return {}; }
    Problems operator()(const OpenPanel& change) const { return openPanel(pattern, side, change); }
    Problems operator()(const ChangeLength& change) const {
        return changeLength(pattern, side, change);
    }
    Problems operator()(const ReshapeEdge& change) const {
        return reshapeEdge(pattern, side, change);
    }
    Problems operator()(const MoveLevel& change) const { return moveLevel(pattern, side, change); }
    Problems operator()(const MoveCorner& change) const {
        return moveCorner(pattern, side, change);
    }
    Problems operator()(const MoveHandle& change) const {
        return moveHandle(pattern, side, change);
    }
    Problems operator()(const SplitPanel& change) const {
        return splitPanel(pattern, side, change);
    }
    Problems operator()(const JoinPanels& change) const {
        return joinPanels(pattern, side, change);
    }
};

bool concernsBlock(const Change& change) {
    return std::holds_alternative<ChangeStyle>(change) ||
           std::holds_alternative<TakeMeasurements>(change);
}

class Applier {
  public:
    Applier(const Pattern& base, std::span<const Alteration> alterations, bool looksAtEveryStep)
        : alterations_(alterations), looksAtEveryStep_(looksAtEveryStep) {
        altered_.pattern = base;
    }

    AlteredPattern applied() {
        for (const Step& step : steps()) applyStep(step);
        std::ranges::sort(altered_.leftOut);
        return std::move(altered_);
    }

  private:
    [[nodiscard]] bool isShape(std::size_t i) const {
        return std::holds_alternative<ShapeSeam>(alterations_[i].change);
    }

    [[nodiscard]] std::vector<Step> steps() const {
        std::vector<Step> steps;
        for (std::size_t i = 0; i < alterations_.size(); ++i) {
            if (!alterations_[i].isOn || concernsBlock(alterations_[i].change)) continue;
            if (isShape(i) && !steps.empty() && isShape(steps.back().front())) {
                steps.back().push_back(i);
            } else {
                steps.push_back({i});
            }
        }
        return steps;
    }

    void leaveOut(std::size_t i, const Problems& problems) {
        altered_.leftOut.push_back(i);
        altered_.problems.insert(altered_.problems.end(), problems.begin(), problems.end());
    }

    [[nodiscard]] Problems breakBy(std::size_t i, const BrokenPanel& broken) const {
        return {{.code = ProblemCode::alterationBreaksPanel,
                 .subject = std::string(kindOf(alterations_[i].change)),
                 .detail = placeNamedBy(alterations_[i].change),
                 .panel = broken.key,
                 .at = broken.at}};
    }

    // The pattern an alteration meets: whole where it concerns one side.
    static void makeWhole(Pattern& pattern, Problems& notes) {
        const auto fold = std::ranges::find_if(pattern.panels, isCutOnFold);
        if (fold != pattern.panels.end()) {
            notes.push_back({.code = ProblemCode::foldBecomesSeam,
                             .severity = Severity::note,
                             .subject = "centre front",
                             .panel = fold->name});
        }
        pattern = wholeOf(pattern);
    }

    // Applies a step to `pattern`; what it says against it, or nothing.
    Problems tried(const Step& step, Pattern& pattern, Problems& notes) const {
        const bool isOneSided = std::ranges::any_of(
            step, [&](std::size_t i) { return alterations_[i].side != BodySide::both; });
        if (isOneSided && !isWhole(pattern)) makeWhole(pattern, notes);
        const Alteration& first = alterations_[step.front()];
        if (!isShape(step.front())) return std::visit(ChangeTo{pattern, first.side}, first.change);
        std::vector<ShapeSeamOnSide> shapes;
        for (const std::size_t i : step)
            shapes.push_back({alterations_[i].side, &std::get<ShapeSeam>(alterations_[i].change)});
        return shapeSeams(pattern, shapes);
    }

    // Applies a step and keeps the outcome, if nothing speaks against it.
    Problems kept(const Step& step, const Pattern& from) {
        Pattern pattern = from;
        Problems notes;
        Problems against = tried(step, pattern, notes);
        if (std::ranges::any_of(against, isError)) return against;
        if (looksAtEveryStep_) {
            if (const auto broken = newlyBroken(from, pattern))
                return breakBy(step.back(), *broken);
        }
        notes.insert(notes.end(), against.begin(), against.end());
        altered_.pattern = std::move(pattern);
        stepNotes_ = std::move(notes);
        return {};
    }

    void applyStep(const Step& step) {
        const Pattern from = altered_.pattern;
        Problems against = kept(step, from);
        if (!against.empty() && step.size() == 1) {
            leaveOut(step.front(), against);
        } else if (!against.empty()) {
            applyOneByOne(step, from);
        }
        altered_.problems.insert(altered_.problems.end(), stepNotes_.begin(), stepNotes_.end());
        stepNotes_.clear();
    }

    // A run in which something does not fit: all that fits together, in order.
    void applyOneByOne(const Step& step, const Pattern& from) {
        Step fitting;
        for (const std::size_t i : step) {
            fitting.push_back(i);
            const Problems against = kept(fitting, from);
            if (against.empty()) continue;
            fitting.pop_back();
            leaveOut(i, against);
        }
    }

    std::span<const Alteration> alterations_;
    bool looksAtEveryStep_;
    AlteredPattern altered_;
    Problems stepNotes_;
};

}  // namespace

AlteredPattern applyAlterations(const Pattern& base, std::span<const Alteration> alterations) {
    AlteredPattern altered = Applier(base, alterations, false).applied();
    // Looking costs more than altering: only when the outcome is broken is every step looked at, to
    // find the one that broke it.
    if (!newlyBroken(base, altered.pattern)) return altered;
    return Applier(base, alterations, true).applied();
}

}  // namespace coutil
