#include "tests/core/store/interchange/sample_pieces.h"

#include <stdexcept>

#include "core/block/draft_corset.h"
#include "core/measurements/body.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil::samples {

namespace {

Style style() {
    Style style;
    style.front = FrontClosure::fold;
    style.ownLevels = {{"ribs & sash", 35}};
    return style;
}

// A style for the k-th body, so that all counts, shapes, closures and bindings are met.
Style styleOf(std::size_t k) {
    Style style;
    style.panelsPerHalf = 4 + static_cast<int>(k % 4);
    style.front = static_cast<FrontClosure>(k % 3);
    style.topEdge.shape = static_cast<TopShape>(k / 2 % 4);
    style.bottomEdge.shape = static_cast<BottomShape>(k / 3 % 4);
    style.allowance.isTopBound = k % 2 == 0;
    style.allowance.seamMm = k % 3 == 0 ? 10 : 15;
    return style;
}

}  // namespace

std::vector<Sample> all() {
    std::vector<Sample> samples{{"sample", corset(), tracings()}};
    const auto sets = bodies::ansurBodies();
    constexpr std::size_t kBodies = 12;
    for (std::size_t k = 0; k < kBodies; ++k) {
        const auto body = completeBody(sets[k * (sets.size() / kBodies)]);
        const Style drafted = styleOf(k);
        auto pattern = body ? draftCorset(*body, drafted) : Outcome<Pattern>();
        if (!pattern) continue;
        auto traced = traceTracings(*pattern, drafted.allowance);
        if (!traced) continue;
        samples.push_back({"body" + std::to_string(k), std::move(*pattern), std::move(*traced)});
    }
    if (samples.size() < kBodies) throw std::runtime_error("too few bodies can be drafted");
    return samples;
}

Pattern corset() {
    using enum Measurement;
    MeasurementSet set;
    set.valuesMm = {{bustGirth, 960},      {underBustGirth, 810}, {waistGirth, 740},
                    {hipGirth, 1010},      {waistToHip, 205},     {waistToBust, 165},
                    {waistToUnderBust, 95}};
    const auto body = completeBody(set);
    if (!body) throw std::runtime_error("the sample body is not accepted");
    auto pattern = draftCorset(*body, style());
    if (!pattern) throw std::runtime_error("the sample corset cannot be drafted");
    return std::move(*pattern);
}

std::vector<Tracing> tracings() {
    auto traced = traceTracings(corset(), style().allowance);
    if (!traced) throw std::runtime_error("the sample corset cannot be traced");
    return std::move(*traced);
}

TracingTitle title() {
    TracingTitle title;
    title.garment =
        "Mieder \xC2\xBB"
        "Rosalinde\xC2\xAB, B\xC3\xBCste <1>";
    title.client = "K\xC3\xA4the";
    title.revision = "pencil";
    title.date = "2026-03-02";
    return title;
}

}  // namespace coutil::samples
