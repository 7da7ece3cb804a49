#include <algorithm>
#include <optional>
#include <string>

#include <pugixml.hpp>

#include "core/store/drawing_svg.h"
#include "core/store/interchange/svg_document.h"
#include "core/store/interchange/svg_numbers.h"
#include "core/store/interchange/svg_path_data.h"

namespace coutil {

namespace {

using interchange::SvgTransform;

constexpr std::string_view kPanelStart = "panel-";

// Where the walk through the groups stands.
struct Place {
    SvgTransform toPageMm;
    std::string panelId;  // of the panel's group, empty outside
    std::size_t panel = 0;
    Point origin = Point::Zero();  // of the panel's frame on the page, mm, y down
    std::optional<LineKind> kind;
    std::string name;
    int depth = 0;
};

class DrawingReader {
  public:
    DrawingReader(std::string_view svg, const interchange::SvgDocument& document)
        : svg_(svg), document_(document) {
        drawing_.widthMm = document.widthMm;
        drawing_.heightMm = document.heightMm;
    }

    Outcome<Drawing> read() {
        Place top;
        top.toPageMm = document_.toPageMm;
        top.origin = Point(0, document_.heightMm);
        walk(document_.xml->document_element(), top);
        if (problem_) return *problem_;
        std::erase_if(drawing_.panels, [](const DrawnPanel& p) { return p.lines.empty(); });
        if (!drawing_.panels.empty()) return std::move(drawing_);
        Problem foreign;
        foreign.code = ProblemCode::drawingForeign;
        return foreign;
    }

  private:
    void walk(const pugi::xml_node& parent, const Place& place) {
        if (place.depth > interchange::kDeepestSvg) return tooDeep();
        for (const pugi::xml_node& child : parent.children()) {
            if (problem_) return;
            if (child.type() != pugi::node_element) continue;
            visit(child, place);
        }
    }

    void visit(const pugi::xml_node& node, const Place& outer) {
        const std::string_view tag = localName(node);
        const bool isGroup = tag == "g" || tag == "svg" || tag == "a";
        if (!isGroup && tag != "path" && tag != "line") return;
        Place place = outer;
        ++place.depth;
        if (const pugi::xml_attribute transform = node.attribute("transform")) {
            const auto read = interchange::readTransform(transform.value());
            if (!read) return broken(transform.value(), node);
            place.toPageMm = interchange::after(outer.toPageMm, *read);
        }
        if (isGroup) {
            enter(node, place);
            walk(node, place);
        } else if (place.kind && tag == "path") {
            takePath(node, place);
        } else if (place.kind) {
            takeLine(node, place);
        }
    }

    static std::string_view localName(const pugi::xml_node& node) {
        const std::string_view name = node.name();
        const auto colon = name.find(':');
        return colon == std::string_view::npos ? name : name.substr(colon + 1);
    }

    void enter(const pugi::xml_node& group, Place& place) {
        const std::string id = group.attribute("id").value();
        const std::string label = group.attribute("aria-label").value();
        if (place.panelId.empty()) {
            if (id.starts_with(kPanelStart)) enterPanel(group, id, label, place);
            return;
        }
        if (!place.kind && id.starts_with(place.panelId + "-")) {
            const std::string key = id.substr(place.panelId.size() + 1);
            for (const LineKind kind : allLineKinds()) {
                if (keyOf(kind) == key) place.kind = kind;
            }
            return;
        }
        if (!label.empty()) place.name = label;
    }

    void enterPanel(const pugi::xml_node& group, const std::string& id, const std::string& label,
                    Place& place) {
        place.panelId = id;
        const std::string name = label.empty() ? id.substr(kPanelStart.size()) : label;
        const auto known = std::ranges::find(drawing_.panels, name, &DrawnPanel::name);
        place.panel = static_cast<std::size_t>(known - drawing_.panels.begin());
        if (known == drawing_.panels.end()) drawing_.panels.push_back({name, {}});
        interchange::SvgNumbers numbers(group.attribute("data-origin").value());
        const auto x = numbers.next();
        const auto y = numbers.next();
        if (x && y) place.origin = interchange::moved(Point(*x, *y), place.toPageMm);
    }

    void takePath(const pugi::xml_node& node, const Place& place) {
        const char* data = node.attribute("d").value();
        const auto stretches = interchange::readPathData(data);
        if (!stretches) return broken(data, node);
        for (const interchange::SvgStretch& stretch : *stretches) {
            if (!stretch.path.isEmpty()) take(stretch.path, stretch.isClosed, place);
        }
    }

    void takeLine(const pugi::xml_node& node, const Place& place) {
        Point a = Point::Zero();
        Point b = Point::Zero();
        const auto read = [&](const char* name, double& value) {
            const pugi::xml_attribute attribute = node.attribute(name);
            if (!attribute) return true;
            interchange::SvgNumbers numbers(attribute.value());
            const auto number = numbers.next();
            value = number.value_or(0);
            return number.has_value();
        };
        if (!read("x1", a.x()) || !read("y1", a.y()) || !read("x2", b.x()) || !read("y2", b.y())) {
            return broken("line", node);
        }
        take(straightPath(a, b), false, place);
    }

    void take(const Path& path, bool isClosed, const Place& place) {
        DrawnLine line{*place.kind, place.name, interchange::moved(path, place.toPageMm), isClosed};
        const auto toFrame = [&](const Point& p) {
            return Point(p.x() - place.origin.x(), place.origin.y() - p.y());
        };
        for (Cubic& c : line.path.pieces) {
            c = {toFrame(c.p0), toFrame(c.p1), toFrame(c.p2), toFrame(c.p3)};
        }
        drawing_.panels[place.panel].lines.push_back(std::move(line));
    }

    void broken(std::string_view text, const pugi::xml_node& node) {
        problem_ = interchange::brokenDrawing(text, svg_, node.offset_debug());
    }

    void tooDeep() {
        problem_.emplace();
        problem_->code = ProblemCode::drawingTooLarge;
        problem_->subject = "depth";
        problem_->figures = {{"value", interchange::kDeepestSvg + 1, FigureUnit::count},
                             {"highest", interchange::kDeepestSvg, FigureUnit::count}};
    }

    std::string_view svg_;
    const interchange::SvgDocument& document_;
    Drawing drawing_;
    std::optional<Problem> problem_;
};

}  // namespace

Outcome<Drawing> readDrawingSvg(std::string_view svg) {
    const Outcome<interchange::SvgDocument> document = interchange::openSvg(svg);
    if (!document) return Outcome<Drawing>::failed(document.problems);
    return DrawingReader(svg, *document).read();
}

}  // namespace coutil
