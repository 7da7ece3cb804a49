#include "core/revision/drift.h"

#include <algorithm>
#include <map>
#include <sstream>
#include <string>
#include <utility>

#include "core/alterations/apply_alterations.h"
#include "core/block/draft_corset.h"
#include "core/geometry/largest_distance.h"
#include "core/geometry/tolerances.h"
#include "core/pattern/panel_key.h"
#include "core/revision/confirm.h"
#include "core/revision/ink.h"
#include "core/revision/ink_grid.h"
#include "core/revision/recipe.h"

namespace coutil {
namespace {

struct Replay {
    std::optional<Pattern> pattern{};  // on the ink grid
    std::vector<Problem> unfit{};      // alterations left out since the block
};

// A pattern and what is to be done to it.
struct ReplayBase {
    std::optional<Pattern> pattern{};
    std::vector<Alteration> alterations{};
    std::vector<Problem> unfit{};
};

bool isGrownFrom(const Recipe& parent, const Recipe& recipe) {
    return recipe.measurements.valuesMm == parent.measurements.valuesMm &&
           !makesAnotherBlock(recipe.style, parent.style) &&
           recipe.alterations.size() >= parent.alterations.size();
}

ReplayBase draftedBase(const Recipe& recipe) {
    ReplayBase base{.pattern = {}, .alterations = recipe.alterations, .unfit = {}};
    const Outcome<Body> body = completeBody(recipe.measurements);
    if (body) base.pattern = draftCorset(*body, recipe.style).value;
    return base;
}

// What was left out when it was confirmed stands among the accepted errors.
bool wasAccepted(const Revision& revision, const Problem& error) {
    std::istringstream lines(revision.content().errorsAccepted);
    const std::string accepted = acceptedErrorLine(error);
    std::string line;
    std::getline(lines, line);  // the reason
    while (std::getline(lines, line))
        if (line == accepted) return true;
    return false;
}

// Replays by digest, each made once.
class Replays {
  public:
    explicit Replays(const Folio& folio) : folio_(folio) {}

    const Replay& of(const Revision& revision) {
        std::vector<const Revision*> missing;
        for (const Revision* each = &revision; each != nullptr && !made_.contains(each->digest());
             each = findRevision(folio_, each->content().parent)) {
            missing.push_back(each);
        }
        for (; !missing.empty(); missing.pop_back())
            made_.emplace(missing.back()->digest(), made(*missing.back()));
        return made_.at(revision.digest());
    }

  private:
    [[nodiscard]] ReplayBase baseOf(const Revision& revision) const {
        const Revision* parent = findRevision(folio_, revision.content().parent);
        if (parent == nullptr || !isGrownFrom(parent->recipe(), revision.recipe()))
            return draftedBase(revision.recipe());
        const Replay& before = made_.at(parent->digest());
        const std::vector<Alteration>& all = revision.recipe().alterations;
        const auto own =
            all.begin() + static_cast<std::ptrdiff_t>(parent->recipe().alterations.size());
        return {before.pattern, {own, all.end()}, before.unfit};
    }

    [[nodiscard]] Replay made(const Revision& revision) const {
        ReplayBase base = baseOf(revision);
        Replay replay{.pattern = {}, .unfit = std::move(base.unfit)};
        if (!base.pattern) return replay;
        AlteredPattern altered = applyAlterations(*base.pattern, base.alterations);
        for (Problem& problem : altered.problems) {
            if (isError(problem) && !wasAccepted(revision, problem))
                replay.unfit.push_back(std::move(problem));
        }
        if (isInkable(altered.pattern)) replay.pattern = onInkGrid(altered.pattern);
        return replay;
    }

    const Folio& folio_;
    std::map<std::string, Replay> made_;
};

Problem changedNote(const Revision& revision) {
    Problem note;
    note.code = ProblemCode::rulesChanged;
    note.severity = Severity::note;
    note.subject = std::to_string(revision.number());
    return note;
}

// The first panel of a that b has not, or not with the same edges; empty where all are alike.
std::string differentPanel(const Pattern& a, const Pattern& b) {
    for (const Panel& panel : a.panels) {
        const auto other = panelWithKey(b, panelKey(panel));
        if (!other ||
            !std::ranges::equal(panel.edges, b.panels[*other].edges, {}, &Edge::name, &Edge::name))
            return panelKey(panel);
    }
    return {};
}

std::optional<Problem> changeOf(const Revision& revision, const Pattern& replay) {
    const Pattern& ink = revision.pattern();
    Problem note = changedNote(revision);
    for (const auto& [a, b] : {std::pair{&ink, &replay}, std::pair{&replay, &ink}}) {
        note.panel = differentPanel(*a, *b);
        if (!note.panel.empty()) return note;
    }
    double largestMm = tolerance::kCompareSearchMm;
    for (const Panel& panel : ink.panels) {
        const Panel& other = replay.panels[*panelWithKey(replay, panelKey(panel))];
        for (std::size_t i = 0; i < panel.edges.size(); ++i) {
            const Path& path = panel.edges[i].path;
            const LargestDistance apart = largestDistance(path, other.edges[i].path);
            if (apart.distanceMm <= largestMm) continue;
            largestMm = apart.distanceMm;
            note.panel = panelKey(panel);
            note.at = pointAt(path, apart.onFirst);
        }
    }
    if (note.panel.empty()) return std::nullopt;
    note.figures = {{"value", largestMm, FigureUnit::millimetre}};
    return note;
}

// The note of an alteration that found its place then and does not now.
Problem unfitNote(const Revision& revision, const Problem& error) {
    Problem note;
    note.code = ProblemCode::rulesChanged;
    note.severity = Severity::note;
    note.subject = error.subject;
    note.detail = error.detail;
    note.figures = {{"revision", static_cast<double>(revision.number()), FigureUnit::count}};
    return note;
}

}  // namespace

std::optional<Pattern> replayOf(const Folio& folio, const Revision& revision) {
    return Replays(folio).of(revision).pattern;
}

std::vector<Problem> driftIn(const Folio& folio, const Garment& garment) {
    std::vector<Problem> notes;
    Replays replays(folio);
    for (const Shared<Revision>& revision : garment.revisions) {
        const Replay& replay = replays.of(*revision);
        const std::optional<Problem> change =
            replay.pattern ? changeOf(*revision, *replay.pattern) : changedNote(*revision);
        if (!change) continue;
        notes.push_back(*change);
        for (const Problem& error : replay.unfit) notes.push_back(unfitNote(*revision, error));
    }
    return notes;
}

}  // namespace coutil
