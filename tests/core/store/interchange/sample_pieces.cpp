#include "tests/core/store/interchange/sample_pieces.h"

#include <stdexcept>

#include "core/block/draft_corset.h"
#include "core/measurements/body.h"

namespace coutil::samples {

namespace {

Style style() {
    Style style;
    style.front = FrontClosure::fold;
    style.ownLevels = {{"ribs & sash", 35}};
    return style;
}

}  // namespace

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
