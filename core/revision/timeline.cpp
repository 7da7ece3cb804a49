#include "core/revision/timeline.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace coutil {
namespace {

// An entry while it has no place yet.
struct Draft {
    TimelineEntry entry;
    std::string parent;  // digest of a revision or id of a pencil
    // Dates that contradict the parents count as the parents' date; entries of a pencil come last.
    bool isPencil = false;
    std::string countsAs{};
    std::size_t rank = 0;  // on one day

    [[nodiscard]] auto key() const { return std::tie(isPencil, countsAs, rank); }
};

// Day and rank of a revision, by digest.
struct Place {
    std::string day;
    std::size_t rank = 0;
};
using Places = std::map<std::string, Place>;

Draft draftOf(TimelineKind kind, std::size_t index, const std::string& date,
              const std::string& parent) {
    Draft draft;
    draft.entry.kind = kind;
    draft.entry.index = index;
    draft.entry.date = date;
    draft.parent = parent;
    return draft;
}

void putRevisions(std::vector<Draft>& drafts, Places& places, const Garment& garment) {
    for (std::size_t i = 0; i < garment.revisions.size(); ++i) {
        const RevisionContent& content = garment.revisions[i]->content();
        Draft draft = draftOf(TimelineKind::revision, i, content.confirmedOn, content.parent);
        const auto parent = places.find(content.parent);
        draft.countsAs = parent == places.end() ? content.confirmedOn
                                                : std::max(content.confirmedOn, parent->second.day);
        draft.rank = 2 * (i + 1);
        places[garment.revisions[i]->digest()] = {draft.countsAs, draft.rank};
        drafts.push_back(std::move(draft));
    }
}

void putFittings(std::vector<Draft>& drafts, const Places& places, const Garment& garment) {
    for (std::size_t i = 0; i < garment.fittings.size(); ++i) {
        const Fitting& fitting = garment.fittings[i];
        Draft draft = draftOf(TimelineKind::fitting, i, fitting.heldOn,
                              fitting.revision.empty() ? fitting.pencil : fitting.revision);
        const auto tried = places.find(draft.parent);
        draft.countsAs =
            tried == places.end() ? fitting.heldOn : std::max(fitting.heldOn, tried->second.day);
        draft.rank = tried == places.end() ? 1 : tried->second.rank + 1;
        drafts.push_back(std::move(draft));
    }
}

std::vector<Draft> draftsOf(const Garment& garment) {
    std::vector<Draft> drafts;
    Places places;
    putRevisions(drafts, places, garment);
    putFittings(drafts, places, garment);
    for (std::size_t i = 0; i < garment.pencils.size(); ++i) {
        const Pencil& pencil = garment.pencils[i];
        Draft draft = draftOf(TimelineKind::pencil, i, pencil.startedOn, pencil.parent);
        draft.isPencil = true;
        draft.rank = i;
        drafts.push_back(std::move(draft));
    }
    std::ranges::stable_sort(drafts, {}, &Draft::key);
    return drafts;
}

std::string nameOf(const Garment& garment, const TimelineEntry& entry) {
    switch (entry.kind) {
        case TimelineKind::revision:
            return garment.revisions[entry.index]->digest();
        case TimelineKind::pencil:
            return garment.pencils[entry.index].id;
        case TimelineKind::fitting:
            break;
    }
    return {};
}

// The first that goes on from an entry stays on its line; every further one opens a new line.
void putLanes(std::vector<TimelineEntry>& entries) {
    std::size_t lanes = 0;
    std::vector<bool> isGoneOn(entries.size(), false);
    for (TimelineEntry& entry : entries) {
        if (entry.kind == TimelineKind::fitting) continue;
        if (entry.parent && !isGoneOn[*entry.parent]) {
            isGoneOn[*entry.parent] = true;
            entry.lane = entries[*entry.parent].lane;
        } else {
            entry.lane = lanes++;
        }
    }
    for (TimelineEntry& entry : entries) {
        if (entry.kind == TimelineKind::fitting && entry.parent)
            entry.lane = entries[*entry.parent].lane;
    }
}

}  // namespace

std::vector<TimelineEntry> timelineOf(const Garment& garment) {
    const std::vector<Draft> drafts = draftsOf(garment);
    std::map<std::string, std::size_t> places;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        const std::string name = nameOf(garment, drafts[i].entry);
        if (!name.empty()) places[name] = i;
    }
    std::vector<TimelineEntry> entries;
    for (const Draft& draft : drafts) {
        entries.push_back(draft.entry);
        const auto parent = places.find(draft.parent);
        if (parent != places.end()) entries.back().parent = parent->second;
    }
    putLanes(entries);
    return entries;
}

std::vector<const Revision*> chainOf(const Folio& folio, const Revision& revision) {
    std::vector<const Revision*> chain;
    // A parent's digest is part of the child's, so that there can be no ring.
    for (const Revision* next = &revision; next != nullptr;
         next = findRevision(folio, next->content().parent))
        chain.push_back(next);
    return chain;
}

}  // namespace coutil
