#pragma once

#include <map>
#include <vector>

#include <gtest/gtest.h>

#include "core/making_up/cutting_plan.h"

namespace coutil::plan_check {

inline int barCount(const CuttingPlan& plan) {
    int count = 0;
    for (const PlannedBar& bar : plan.bars) count += bar.count;
    return count;
}

// A plan taken to the saw: every bar holds its pieces and cuts, every piece is cut as often as
// asked, and the sums are those of the bars. All lengths in whole millimetres or tenths.
inline void expectSound(const CuttingPlan& plan, const std::vector<PieceToCut>& pieces,
                        double lossPerCutMm) {
    std::map<double, int> open;
    for (const PieceToCut& piece : pieces) {
        if (piece.count > 0) open[piece.lengthMm] += piece.count;
    }
    double stockMm = 0;
    for (const PlannedBar& bar : plan.bars) {
        double usedMm = 0;
        int cuts = 0;
        for (const PieceToCut& cut : bar.cuts) {
            usedMm += cut.count * cut.lengthMm;
            cuts += cut.count;
            open[cut.lengthMm] -= cut.count * bar.count;
        }
        EXPECT_LE(usedMm + (cuts - 1) * lossPerCutMm, bar.stockLengthMm + 1e-6);
        EXPECT_NEAR(usedMm + bar.lossMm + bar.leftMm, bar.stockLengthMm, 1e-6);
        EXPECT_LE(bar.lossMm, cuts * lossPerCutMm + 1e-6);
        EXPECT_GE(bar.leftMm, 0);
        stockMm += bar.count * bar.stockLengthMm;
    }
    for (const auto& [lengthMm, count] : open) EXPECT_EQ(count, 0) << lengthMm << " mm";
    EXPECT_NEAR(plan.stockMm, stockMm, 1e-6);
    EXPECT_NEAR(plan.piecesMm + plan.lossMm + plan.leftMm, plan.stockMm, 1e-6);
    EXPECT_LE(plan.leastStockMm, plan.stockMm + 1e-6);
}

}  // namespace coutil::plan_check
