#include "core/store/interchange/svg_document.h"

#include <algorithm>
#include <array>

#include <pugixml.hpp>

#include "core/store/interchange/svg_numbers.h"

namespace coutil::interchange {

namespace {

Problem problemOf(ProblemCode code) {
    Problem problem;
    problem.code = code;
    return problem;
}

// Width, height and the scale that lays the view box into them, centred, as SVG does by itself.
std::optional<SvgDocument> measured(const pugi::xml_node& root) {
    SvgDocument document;
    SvgNumbers numbers(root.attribute("viewBox").value());
    std::array<double, 4> box{};
    bool hasBox = true;
    for (double& number : box) {
        const auto next = numbers.next();
        hasBox = hasBox && next.has_value();
        number = next.value_or(0);
    }
    const auto width = svgLengthMm(root.attribute("width").value());
    const auto height = svgLengthMm(root.attribute("height").value());
    constexpr double kPxMm = 25.4 / 96;
    document.widthMm = width.value_or(box[2] * kPxMm);
    document.heightMm = height.value_or(box[3] * kPxMm);
    if (!(document.widthMm > 0) || !(document.heightMm > 0)) return std::nullopt;
    if (!hasBox) {
        document.toPageMm = {kPxMm, 0, 0, kPxMm, 0, 0};
        return document;
    }
    if (!(box[2] > 0) || !(box[3] > 0)) return std::nullopt;
    const double scale = std::min(document.widthMm / box[2], document.heightMm / box[3]);
    document.toPageMm = {scale,
                         0,
                         0,
                         scale,
                         (document.widthMm - scale * box[2]) / 2 - scale * box[0],
                         (document.heightMm - scale * box[3]) / 2 - scale * box[1]};
    return document;
}

}  // namespace

Problem brokenDrawing(std::string_view place, std::string_view whole, std::ptrdiff_t offset) {
    constexpr std::size_t kShown = 40;
    Problem problem = problemOf(ProblemCode::drawingUnreadable);
    for (const char c : place.substr(0, kShown)) {
        problem.detail += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
    if (offset < 0) return problem;
    const auto before = whole.substr(0, static_cast<std::size_t>(offset));
    const auto line = std::count(before.begin(), before.end(), '\n') + 1;
    problem.figures.push_back({"line", static_cast<double>(line), FigureUnit::count});
    return problem;
}

Outcome<SvgDocument> openSvg(std::string_view svg) {
    if (svg.size() > kMostSvgBytes) {
        Problem problem = problemOf(ProblemCode::drawingTooLarge);
        problem.subject = "bytes";
        problem.figures = {{"value", static_cast<double>(svg.size()), FigureUnit::count},
                           {"highest", static_cast<double>(kMostSvgBytes), FigureUnit::count}};
        return problem;
    }
    auto xml = std::make_shared<pugi::xml_document>();
    // Five standard entities only; a DOCTYPE is skipped unread.
    const auto parsed = xml->load_buffer(svg.data(), svg.size(), pugi::parse_default);
    if (!parsed) {
        const auto at = std::min(
            static_cast<std::size_t>(std::max<std::ptrdiff_t>(parsed.offset, 0)), svg.size());
        return brokenDrawing(svg.substr(at), svg, static_cast<std::ptrdiff_t>(at));
    }
    const pugi::xml_node root = xml->document_element();
    const std::string_view name = root.name();
    if (name != "svg" && !name.ends_with(":svg")) return problemOf(ProblemCode::drawingForeign);
    auto document = measured(root);
    if (!document) return brokenDrawing("viewBox", svg, root.offset_debug());
    document->xml = std::move(xml);
    return std::move(*document);
}

}  // namespace coutil::interchange
