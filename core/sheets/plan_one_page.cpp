#include "core/sheets/plan_one_page.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/tolerances.h"
#include "core/sheets/finish_plan.h"
#include "core/sheets/sheet_grid.h"

namespace coutil {
namespace {

// Widths tried: from what the first block needs beside nothing else, a fifth wider each time.
constexpr long long kNarrowestUm = 400'000;
constexpr double kWider = 1.2;

double mm(long long um) { return static_cast<double>(um) / 1000; }

// The page ends to the right where the pieces and the first block do, on a whole centimetre.
void cutWidth(const std::vector<Tracing>& tracings, SheetPlan& plan) {
    double right = plan.firstBlock ? plan.firstBlock->box.highest.x() : 0;
    for (const OutlineShape& shape : shapesOn(plan, tracings)) {
        right = std::max(right, shape.box.highest.x() + tolerance::kHalfPenMm);
    }
    const double onPaperMm = right * correctionOf(plan).x + 2 * mm(plan.options.marginUm);
    const long long widthUm = static_cast<long long>(std::ceil(onPaperMm / 10)) * 10'000;
    if (widthUm >= plan.sheetWidthUm) return;
    const long long narrowerUm = static_cast<long long>(
        static_cast<double>(plan.sheetWidthUm - widthUm) / correctionOf(plan).x);
    plan.sheetWidthUm = widthUm;
    plan.frameXUm -= narrowerUm + 1;
    plan.stepXUm -= narrowerUm + 1;
}

double areaOf(const SheetPlan& plan) { return mm(plan.sheetWidthUm) * mm(plan.sheetHeightUm); }

}  // namespace

Outcome<SheetPlan> planOnePage(const std::vector<Tracing>& tracings, const SheetOptions& options) {
    std::optional<SheetPlan> best;
    long long widthUm = kNarrowestUm + 2 * options.marginUm;
    for (bool isLast = false; !isLast;) {
        isLast = widthUm >= kLongestPageUm;
        SheetOptions roll = options;
        roll.paper = {options.paper.name, std::min(widthUm, kLongestPageUm), kLongestPageUm, true};
        auto plan = planSheets(tracings, roll);
        // With nothing on it the page still has its square.
        if (plan && plan->sheets.size() <= 1 && (plan->firstBlock || plan->sheets.empty())) {
            plan->options = options;
            if (!plan->sheets.empty()) cutWidth(tracings, *plan);
            if (!best || areaOf(*plan) < areaOf(*best)) best = std::move(*plan);
        }
        widthUm = static_cast<long long>(static_cast<double>(widthUm) * kWider);
    }
    if (best) return std::move(*best);
    return tooManySheets(options, 2);
}

}  // namespace coutil
