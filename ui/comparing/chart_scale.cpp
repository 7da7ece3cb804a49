#include "ui/comparing/chart_scale.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace coutil {

namespace {

constexpr double kMarginShare = 0.06;

struct Range {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void include(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
    void widen() {
        const double margin = std::max(1.0, kMarginShare * (high - low));
        low -= margin;
        high += margin;
    }
};

std::vector<QPolygonF> linesOf(const GirthChart& chart, const ChartScale& scale,
                               std::optional<double> GirthAt::*girth) {
    std::vector<QPolygonF> lines(1);
    for (const GirthAt& at : chart.girths) {
        if (at.*girth) {
            lines.back() << QPointF(scale.x(*(at.*girth)), scale.y(at.heightMm));
        } else if (!lines.back().isEmpty()) {
            lines.emplace_back();
        }
    }
    if (lines.back().isEmpty()) lines.pop_back();
    return lines;
}

std::optional<double> between(double at, double low, double high, std::optional<double> atLow,
                              std::optional<double> atHigh) {
    if (!atLow || !atHigh) return std::nullopt;
    const double share = high > low ? (at - low) / (high - low) : 0;
    return *atLow + share * (*atHigh - *atLow);
}

}  // namespace

ChartScale::ChartScale(const GirthChart& chart, const QRectF& area) : area_(area) {
    Range girths;
    Range heights;
    for (const GirthAt& at : chart.girths) {
        heights.include(at.heightMm);
        if (at.aMm) girths.include(*at.aMm);
        if (at.bMm) girths.include(*at.bMm);
    }
    for (const BodyGirth& body : chart.body) {
        heights.include(body.heightMm);
        girths.include(body.girthMm);
    }
    if (girths.low > girths.high) return;
    girths.widen();
    heights.widen();
    lowestGirthMm_ = girths.low;
    highestGirthMm_ = girths.high;
    lowestMm_ = heights.low;
    highestMm_ = heights.high;
}

double ChartScale::x(double girthMm) const {
    return area_.left() +
           area_.width() * (girthMm - lowestGirthMm_) / (highestGirthMm_ - lowestGirthMm_);
}

double ChartScale::y(double heightMm) const {
    return area_.bottom() - area_.height() * (heightMm - lowestMm_) / (highestMm_ - lowestMm_);
}

double ChartScale::heightMmAt(double y) const {
    return lowestMm_ + (area_.bottom() - y) / area_.height() * (highestMm_ - lowestMm_);
}

std::vector<double> ChartScale::girthTicksMm(LengthUnit unit, double closest) const {
    constexpr std::array kSteps{1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0};
    const double one =
        millimetresIn(unit == LengthUnit::inch ? LengthUnit::inch : LengthUnit::centimetre);
    double step = one * kSteps.back();
    for (const double each : kSteps) {
        if (x(one * each) - x(0) < closest) continue;
        step = one * each;
        break;
    }
    std::vector<double> ticks;
    for (double n = std::ceil(lowestGirthMm_ / step); n * step <= highestGirthMm_; ++n) {
        ticks.push_back(n * step);
    }
    return ticks;
}

std::vector<QPolygonF> ChartScale::lineOfA(const GirthChart& chart) const {
    return linesOf(chart, *this, &GirthAt::aMm);
}

std::vector<QPolygonF> ChartScale::lineOfB(const GirthChart& chart) const {
    return linesOf(chart, *this, &GirthAt::bMm);
}

QPolygonF ChartScale::lineOfBody(const GirthChart& chart) const {
    QPolygonF line;
    for (const BodyGirth& body : chart.body) line << QPointF(x(body.girthMm), y(body.heightMm));
    return line;
}

ChartReading readingAt(const GirthChart& chart, double heightMm) {
    ChartReading reading{.heightMm = heightMm, .bodyMm = {}, .aMm = {}, .bMm = {}};
    for (std::size_t i = 1; i < chart.girths.size(); ++i) {
        const GirthAt& low = chart.girths[i - 1];
        const GirthAt& high = chart.girths[i];
        if (heightMm < low.heightMm || heightMm > high.heightMm) continue;
        reading.aMm = between(heightMm, low.heightMm, high.heightMm, low.aMm, high.aMm);
        reading.bMm = between(heightMm, low.heightMm, high.heightMm, low.bMm, high.bMm);
    }
    for (std::size_t i = 1; i < chart.body.size(); ++i) {
        const BodyGirth& low = chart.body[i - 1];
        const BodyGirth& high = chart.body[i];
        if (heightMm < low.heightMm || heightMm > high.heightMm) continue;
        reading.bodyMm = between(heightMm, low.heightMm, high.heightMm, low.girthMm, high.girthMm);
    }
    return reading;
}

}  // namespace coutil
