#include <algorithm>
#include <cmath>

#include "core/geometry/closest_on_piece.h"
#include "core/geometry/path.h"
#include "core/geometry/piece_contacts.h"
#include "core/geometry/tolerances.h"

namespace coutil {

namespace {

// A contact of two paths: a place, or a stretch with the positions of both its ends.
struct PathContact {
    PathPosition firstStart, firstEnd;
    PathPosition secondStart, secondEnd;
    bool isStretch = false;
};

bool isBefore(const PathPosition& a, const PathPosition& b) {
    return a.piece != b.piece ? a.piece < b.piece : a.t < b.t;
}

// One place on the path: equal points that lie next to each other along it, not merely where the
// path crosses itself.
bool areSame(const Path& path, const PathPosition& a, const PathPosition& b) {
    constexpr double kNearby = 1e-2;
    const double along = static_cast<double>(b.piece) + b.t - (static_cast<double>(a.piece) + a.t);
    return std::abs(along) < kNearby &&
           (pointAt(path, a) - pointAt(path, b)).norm() <= tolerance::kSameMeetingMm;
}

bool areApart(const Box& a, const Box& b) {
    constexpr double kTouch = tolerance::kTouchMm;
    return a.lowest.x() > b.highest.x() + kTouch || b.lowest.x() > a.highest.x() + kTouch ||
           a.lowest.y() > b.highest.y() + kTouch || b.lowest.y() > a.highest.y() + kTouch;
}

std::vector<Box> controlBoxesOf(const Path& path) {
    std::vector<Box> boxes;
    boxes.reserve(path.pieces.size());
    for (const Cubic& c : path.pieces) boxes.push_back(controlBoxOf(c));
    return boxes;
}

std::vector<PathContact> contactsOf(const Path& first, const Path& second) {
    const auto boxes = controlBoxesOf(second);
    Box whole;
    for (const Box& box : boxes) whole.include(box);
    std::vector<PathContact> contacts;
    for (std::size_t i = 0; i < first.pieces.size(); ++i) {
        const Box box = controlBoxOf(first.pieces[i]);
        if (areApart(box, whole)) continue;
        for (std::size_t j = 0; j < second.pieces.size(); ++j) {
            if (areApart(box, boxes[j])) continue;
            for (const PieceContact& c : contactsOf(first.pieces[i], second.pieces[j])) {
                contacts.push_back({{i, c.firstStart},
                                    {i, c.firstEnd},
                                    {j, c.secondStart},
                                    {j, c.secondEnd},
                                    c.isStretch()});
            }
        }
    }
    return contacts;
}

// Stretches that go on across the joint of two pieces become one.
std::vector<PathContact> joinedStretches(const Path& first, const Path& second,
                                         const std::vector<PathContact>& contacts) {
    std::vector<PathContact> stretches;
    for (const PathContact& next : contacts) {
        if (!next.isStretch) continue;
        const auto goesOn = [&](const PathContact& s) {
            return areSame(first, s.firstEnd, next.firstStart) &&
                   areSame(second, s.secondEnd, next.secondStart);
        };
        const auto before = std::find_if(stretches.begin(), stretches.end(), goesOn);
        if (before == stretches.end()) {
            stretches.push_back(next);
        } else {
            before->firstEnd = next.firstEnd;
            before->secondEnd = next.secondEnd;
        }
    }
    return stretches;
}

}  // namespace

std::vector<Meeting> meetingsOf(const Path& first, const Path& second) {
    auto contacts = contactsOf(first, second);
    std::stable_sort(contacts.begin(), contacts.end(),
                     [](const PathContact& a, const PathContact& b) {
                         return isBefore(a.firstStart, b.firstStart);
                     });
    std::vector<Meeting> meetings;
    const auto append = [&](const PathPosition& onFirst, const PathPosition& onSecond) {
        const bool isKnown = std::any_of(meetings.begin(), meetings.end(), [&](const Meeting& m) {
            return areSame(first, m.onFirst, onFirst) && areSame(second, m.onSecond, onSecond);
        });
        if (!isKnown) meetings.push_back({onFirst, onSecond, pointAt(first, onFirst)});
    };
    const auto stretches = joinedStretches(first, second, contacts);
    for (const PathContact& s : stretches) {
        append(s.firstStart, s.secondStart);
        append(s.firstEnd, s.secondEnd);
    }
    for (const PathContact& c : contacts) {
        const bool isInStretch =
            std::any_of(stretches.begin(), stretches.end(), [&](const PathContact& s) {
                return isBefore(s.firstStart, c.firstStart) && isBefore(c.firstStart, s.firstEnd) &&
                       (isBefore(s.secondStart, c.secondStart) !=
                        isBefore(s.secondEnd, c.secondStart));
            });
        if (!c.isStretch && !isInStretch) append(c.firstStart, c.secondStart);
    }
    std::stable_sort(meetings.begin(), meetings.end(), [](const Meeting& a, const Meeting& b) {
        return isBefore(a.onFirst, b.onFirst);
    });
    return meetings;
}

}  // namespace coutil
