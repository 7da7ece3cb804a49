#include "core/making_up/bones.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kBetweenPlacesMm = 4;

struct Bend {
    double radiusMm = std::numeric_limits<double>::infinity();
    Point at = Point::Zero();
};

Bend tightestBend(const Path& line) {
    double most = 0;
    Bend bend;
    for (const Cubic& piece : line.pieces) {
        const double legsMm = (piece.p1 - piece.p0).norm() + (piece.p2 - piece.p1).norm() +
                              (piece.p3 - piece.p2).norm();
        const int count = std::max(1, static_cast<int>(std::ceil(legsMm / kBetweenPlacesMm)));
        for (int k = 0; k <= count; ++k) {
            const double t = static_cast<double>(k) / count;
            const double curvature = std::abs(curvaturePerMmAt(piece, t));
            if (curvature <= most) continue;
            most = curvature;
            bend = {1 / curvature, pointAt(piece, t)};
        }
    }
    return bend;
}

double radiusLimitMm(const BoneChoices& bones, BoneKind kind) {
    switch (kind) {
        case BoneKind::flatSteel:
            return bones.flatSteelRadiusMm;
        case BoneKind::spiralSteel:
            return bones.spiralSteelRadiusMm;
        case BoneKind::synthetic:
            return bones.syntheticRadiusMm;
    }
    return 0;
}

// A channel stitched off inside the panel needs no more than at a bound edge.
double freeMm(bool isAtEdge, bool isBound, const MakingUpChoices& choices) {
    if (isAtEdge && !isBound) return choices.bones.freeAtTurnedMm;
    if (!isAtEdge) return choices.bones.freeAtBoundMm;
    return std::max(choices.bones.freeAtBoundMm, choices.binding.finishedMm);
}

double roundedDown(double mm, double stepMm) {
    return std::floor((mm + tolerance::kSettledLengthMm) / stepMm) * stepMm;
}

void appendStiff(const Panel& panel, const Channel& channel, const BoneChoices& bones,
                 std::vector<Problem>& problems) {
    const Bend bend = tightestBend(channel.line);
    const double limitMm = radiusLimitMm(bones, channel.bone.kind);
    if (bend.radiusMm >= limitMm) return;
    problems.push_back({.code = ProblemCode::boneKindTooStiff,
                        .severity = Severity::warning,
                        .subject = channel.key,
                        .panel = panel.name,
                        .at = bend.at,
                        .figures = {{"value", bend.radiusMm}, {"limit", limitMm}}});
}

BoneRow rowOf(const Panel& panel, const Channel& channel, const AllowanceStyle& allowance,
              const MakingUpChoices& choices, std::vector<Problem>& problems) {
    BoneRow row{.channel = channel.key,
                .side = channel.side,
                .type = channel.bone,
                .channelLengthMm = lengthMm(channel.line),
                .count = channel.side == PanelSide::both && !channel.isOnFold ? 2 : 1};
    const double roomMm = row.channelLengthMm -
                          freeMm(channel.endsAtBottomEdge, allowance.isBottomBound, choices) -
                          freeMm(channel.endsAtTopEdge, allowance.isTopBound, choices);
    row.lengthMm = std::max(0.0, roundedDown(roomMm, choices.bones.stepMm));
    if (row.lengthMm >= choices.bones.shortestMm) return row;
    problems.push_back({.code = ProblemCode::boneTooShort,
                        .severity = Severity::warning,
                        .subject = channel.key,
                        .panel = panel.name,
                        .figures = {{"value", row.lengthMm}, {"limit", choices.bones.shortestMm}}});
    row.lengthMm = 0;
    return row;
}

std::vector<BoneTotal> totalsOf(const std::vector<BoneRow>& rows) {
    // Longest first within a type.
    std::map<std::pair<BoneType, double>, int> counts;
    for (const BoneRow& row : rows)
        if (row.lengthMm > 0) counts[{row.type, -row.lengthMm}] += row.count;
    std::vector<BoneTotal> totals;
    totals.reserve(counts.size());
    for (const auto& [key, count] : counts) totals.push_back({key.first, -key.second, count});
    return totals;
}

}  // namespace

BoneTable boneTable(const Pattern& pattern, const std::vector<Channel>& channels,
                    const AllowanceStyle& allowance, const MakingUpChoices& choices,
                    std::vector<Problem>& problems) {
    BoneTable table;
    table.rows.reserve(channels.size());
    for (const Channel& channel : channels) {
        const Panel& panel = pattern.panels[channel.panel];
        table.rows.push_back(rowOf(panel, channel, allowance, choices, problems));
        appendStiff(panel, channel, choices.bones, problems);
    }
    table.totals = totalsOf(table.rows);
    return table;
}

}  // namespace coutil
