#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>
#include <set>
#include <string>
#include <string_view>

#include "core/block/draft_corset.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr int kFewestPanels = 4;
constexpr int kMostPanels = 7;

class StyleCheck {
  public:
    explicit StyleCheck(const Style& style) : style_(style) {}

    std::vector<Problem> run() {
        inRange("panels_per_half", style_.panelsPerHalf, kFewestPanels, kMostPanels,
                FigureUnit::count);
        inRange("lacing_gap", style_.lacingGapMm, 0, 300);
        inRange("front_share", style_.frontShare * 100, 35, 75, FigureUnit::percent);
        if (!problems_.empty()) return problems_;  // the rest is counted by the panels
        checkLevels();
        checkEdges();
        checkShares();
        checkOwnLevels();
        checkAllowance();
        return problems_;
    }

  private:
    void inRange(const std::string& key, double value, double lowest, double highest,
                 FigureUnit unit = FigureUnit::millimetre) {
        if (value >= lowest && value <= highest) return;  // false for a value that is no number
        problems_.push_back(
            {.code = ProblemCode::styleValueOutOfRange,
             .subject = key,
             .figures = {
                 {"value", value, unit}, {"lowest", lowest, unit}, {"highest", highest, unit}}});
    }
    void unknown(const std::string& key, const std::string& name) {
        problems_.push_back({.code = ProblemCode::styleUnknownKey, .subject = key, .detail = name});
    }
    [[nodiscard]] std::size_t panelCount() const {
        return static_cast<std::size_t>(style_.panelsPerHalf);
    }
    [[nodiscard]] bool isSeam(std::string_view name) const {
        for (std::size_t seam = 1; seam < panelCount(); ++seam)
            if (name == std::to_string(seam) + "-" + std::to_string(seam + 1)) return true;
        return false;
    }
    [[nodiscard]] bool isPanelEdge(std::string_view name) const {
        const std::size_t slash = name.find('/');
        if (slash == std::string_view::npos) return false;
        const std::string_view edge = name.substr(slash + 1);
        for (std::size_t panel = 1; panel <= panelCount(); ++panel) {
            if (name.substr(0, slash) != std::to_string(panel)) continue;
            const auto seam = [](std::size_t front) {
                return "seam " + std::to_string(front) + "-" + std::to_string(front + 1);
            };
            return edge == "top" || edge == "bottom" ||
                   edge == (panel == 1 ? "centre front" : seam(panel - 1)) ||
                   edge == (panel == panelCount() ? "centre back" : seam(panel));
        }
        return false;
    }

    void checkLevels() {
        for (const auto& [level, mm] : style_.easeMm)
            inRange("ease." + std::string(keyOf(level)), mm, -400, 400);
        for (const auto& [level, mm] : style_.lacingGapAtMm)
            inRange("lacing_gap_at." + std::string(keyOf(level)), mm, 0, 300);
    }

    void checkHeight(const std::string& key, const std::optional<double>& mm) {
        if (mm) inRange(key, *mm, 10, 600);
    }
    void checkAtSeams(const std::string& key, const std::map<std::string, double>& atSeamMm) {
        for (const auto& [seam, mm] : atSeamMm) {
            if (isSeam(seam)) {
                checkHeight(std::string(key).append(".").append(seam), mm);
            } else {
                unknown(key, seam);
            }
        }
    }
    void checkEdges() {
        const auto& top = style_.topEdge;
        checkHeight("top_edge.front", top.frontMm);
        checkHeight("top_edge.bust_seam", top.bustSeamMm);
        checkHeight("top_edge.side", top.sideMm);
        checkHeight("top_edge.back", top.backMm);
        checkAtSeams("top_edge.at_seam", top.atSeamMm);
        const auto& bottom = style_.bottomEdge;
        checkHeight("bottom_edge.front", bottom.frontMm);
        checkHeight("bottom_edge.side", bottom.sideMm);
        checkHeight("bottom_edge.back", bottom.backMm);
        checkAtSeams("bottom_edge.at_seam", bottom.atSeamMm);
    }

    void checkCount(const std::string& key, std::size_t count, std::size_t wanted) {
        inRange(key, static_cast<double>(count), static_cast<double>(wanted),
                static_cast<double>(wanted), FigureUnit::count);
    }
    void checkShares() {
        if (!style_.panelShares.empty()) {
            checkCount("panel_shares", style_.panelShares.size(), panelCount());
            for (const double share : style_.panelShares)
                inRange("panel_shares", share, 0.01, 1000, FigureUnit::count);
        }
        for (const auto& [level, shares] : style_.seamShares) {
            const std::string key = "seam_shares." + std::string(keyOf(level));
            checkCount(key, shares.size(), panelCount() - 1);
            for (const double share : shares)
                inRange(key, share * 100, -50, 150, FigureUnit::percent);
            const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
            if (!(std::abs(sum - 1) <= tolerance::kShareSum))
                inRange(key + ".sum", sum * 100, 100, 100, FigureUnit::percent);
        }
        for (const auto& [seam, part] : style_.frontPart) {
            if (isSeam(seam)) {
                inRange("front_part." + seam, part * 100, 0, 100, FigureUnit::percent);
            } else {
                unknown("front_part", seam);
            }
        }
    }

    void checkOwnLevels() {
        std::set<std::string> seen;
        for (const OwnLevel& own : style_.ownLevels) {
            inRange("own_levels." + own.name, own.heightMm, -600, 600);
            const bool isTaken = own.name.empty() || levelNamed(own.name).has_value();
            if (isTaken || !seen.insert(own.name).second) unknown("own_levels", own.name);
        }
    }

    void checkAllowance() {
        const auto& allowance = style_.allowance;
        inRange("allowance.seam", allowance.seamMm, 0, 100);
        inRange("allowance.opening", allowance.openingMm, 0, 100);
        inRange("allowance.edge", allowance.edgeMm, 0, 100);
        for (const auto& [edge, mm] : allowance.byEdgeMm) {
            if (isPanelEdge(edge)) {
                inRange("allowance.by_edge." + edge, mm, 0, 100);
            } else {
                unknown("allowance.by_edge", edge);
            }
        }
    }

    const Style& style_;
    std::vector<Problem> problems_;
};

}  // namespace

std::vector<Problem> checkStyle(const Style& style) { return StyleCheck(style).run(); }

}  // namespace coutil
