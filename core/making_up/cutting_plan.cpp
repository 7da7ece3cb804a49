#include "core/making_up/cutting_plan.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include "core/making_up/choice_range.h"
#include "core/making_up/search_bars.h"

namespace coutil {
namespace {

constexpr double kPerMm = 1000;
constexpr double kLongestMm = 100'000;
constexpr int kMostPieces = 8000;
constexpr int kMostStocks = 8;
static_assert(kCostPerUnit > kMostPieces);

std::int64_t wholeUp(double mm) {
    // What a decimal length lacks to its micrometre by rounding is no micrometre more.
    return static_cast<std::int64_t>(std::ceil(mm * kPerMm - 1e-6));
}

std::int64_t wholeDown(double mm) {
    return static_cast<std::int64_t>(std::floor(mm * kPerMm + 1e-6));
}

void checkStock(const std::vector<double>& stockLengthsMm, double lossPerCutMm,
                std::vector<Problem>& problems) {
    requireWithin("cutting/stock_lengths", static_cast<double>(stockLengthsMm.size()), 1,
                  kMostStocks, problems, FigureUnit::count);
    for (const double mm : stockLengthsMm)
        requireWithin("cutting/stock_length", mm, 1, kLongestMm, problems);
    requireWithin("cutting/loss_per_cut", lossPerCutMm, 0, 100, problems);
}

void checkPieces(const std::vector<PieceToCut>& pieces, double longestStockMm,
                 std::vector<Problem>& problems) {
    double count = 0;
    for (const PieceToCut& piece : pieces) {
        count += piece.count;
        requireWithin("cutting/count", piece.count, 0, kMostPieces, problems, FigureUnit::count);
        requireWithin("cutting/length", piece.lengthMm, 0.1, kLongestMm, problems);
        if (piece.count <= 0 || !(piece.lengthMm <= kLongestMm)) continue;
        if (wholeUp(piece.lengthMm) > wholeDown(longestStockMm)) {
            problems.push_back({.code = ProblemCode::pieceLongerThanStock,
                                .subject = "cutting",
                                .figures = {{"value", piece.lengthMm}, {"limit", longestStockMm}}});
        }
    }
    requireWithin("cutting/pieces", count, 0, kMostPieces, problems, FigureUnit::count);
}

CuttingTask taskOf(const std::vector<PieceToCut>& pieces, const std::vector<double>& stockLengthsMm,
                   std::int64_t loss) {
    std::map<std::int64_t, int, std::greater<>> sizes;
    for (const PieceToCut& piece : pieces) {
        if (piece.count > 0) sizes[wholeUp(piece.lengthMm) + loss] += piece.count;
    }
    std::set<std::int64_t> stocks;
    for (const double mm : stockLengthsMm) stocks.insert(wholeDown(mm));
    CuttingTask task;
    for (const auto& [size, count] : sizes) {
        task.sizes.push_back(size);
        task.wanted.push_back(count);
    }
    task.commonLength = 0;
    for (const std::int64_t stock : stocks) {
        task.commonLength = std::gcd(task.commonLength, stock);
        task.rooms.push_back(stock + loss);
        task.costs.push_back(stock * kCostPerUnit + 1);
    }
    return task;
}

PlannedBar barOf(const CuttingTask& task, const BarPattern& pattern, std::int64_t loss) {
    const std::int64_t stock = task.rooms[pattern.stock] - loss;
    PlannedBar bar{.stockLengthMm = static_cast<double>(stock) / kPerMm};
    std::int64_t lost = 0;
    std::int64_t rest = stock;
    for (std::size_t i = 0; i < task.sizes.size(); ++i) {
        if (pattern.counts[i] == 0) continue;
        bar.cuts.push_back({static_cast<double>(task.sizes[i] - loss) / kPerMm, pattern.counts[i]});
        lost += pattern.counts[i] * loss;
        rest -= pattern.counts[i] * task.sizes[i];
    }
    // The last cut may fall on the bar's end, wholly or in part.
    if (rest < 0) lost += rest;
    bar.lossMm = static_cast<double>(lost) / kPerMm;
    bar.leftMm = static_cast<double>(std::max<std::int64_t>(rest, 0)) / kPerMm;
    return bar;
}

CuttingPlan planOf(const CuttingTask& task, FoundPlan found, std::int64_t loss) {
    CuttingPlan plan;
    std::map<BarPattern, int> alike;
    for (BarPattern& pattern : found.plan.bars) ++alike[std::move(pattern)];
    for (const auto& [pattern, count] : alike) {
        PlannedBar bar = barOf(task, pattern, loss);
        bar.count = count;
        plan.stockMm += count * bar.stockLengthMm;
        plan.lossMm += count * bar.lossMm;
        plan.leftMm += count * bar.leftMm;
        for (const PieceToCut& cut : bar.cuts) plan.piecesMm += count * cut.count * cut.lengthMm;
        plan.bars.push_back(std::move(bar));
    }
    std::ranges::stable_sort(plan.bars, [](const PlannedBar& a, const PlannedBar& b) {
        if (a.stockLengthMm != b.stockLengthMm) return a.stockLengthMm > b.stockLengthMm;
        return a.leftMm < b.leftMm;
    });
    const std::int64_t leastStock = found.leastCost / kCostPerUnit;
    plan.leastStockMm = static_cast<double>(leastStock) / kPerMm;
    plan.isProvedBest = found.leastCost == found.plan.cost;
    return plan;
}

}  // namespace

Outcome<CuttingPlan> cuttingPlan(const std::vector<PieceToCut>& pieces,
                                 const std::vector<double>& stockLengthsMm, double lossPerCutMm,
                                 const CuttingEffort& effort) {
    std::vector<Problem> problems;
    checkStock(stockLengthsMm, lossPerCutMm, problems);
    if (problems.empty()) checkPieces(pieces, *std::ranges::max_element(stockLengthsMm), problems);
    if (!problems.empty()) return Outcome<CuttingPlan>::failed(std::move(problems));
    const std::int64_t loss = wholeUp(lossPerCutMm);
    const CuttingTask task = taskOf(pieces, stockLengthsMm, loss);
    StepsLeft left{effort.steps};
    return planOf(task, searchBars(task, left), loss);
}

}  // namespace coutil
