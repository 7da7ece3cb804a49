#include "core/store/interchange/svg_writer.h"

#include "core/store/interchange/number_text.h"

namespace coutil::interchange {

namespace {

constexpr int kDecimals = 4;

// Hair lines, each kind of line told apart by its dashes too.
constexpr std::string_view kStyle =
    "path,line{fill:none;stroke:#000;stroke-width:0.25}"
    ".cutting{stroke-width:0.35}"
    ".inner{stroke-dasharray:4 1.5}"
    ".level{stroke:#0072b2;stroke-width:0.18;stroke-dasharray:1.5 1.5}"
    ".grain{stroke:#009e73}"
    ".notch{stroke-width:0.3}"
    ".fold{stroke:#d55e00;stroke-dasharray:6 1.5 1 1.5}"
    ".mark{stroke:#d55e00}"
    "text{font-family:sans-serif;fill:#000}";

std::string mm(double value) { return numberText(value, kDecimals); }

std::string identifier(std::string_view text) {
    std::string id;
    for (const char c : text) {
        const bool isPlain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') ||
                             (c >= 'A' && c <= 'Z') || c == '-' || c == '_' || c == '.';
        id += isPlain ? c : '-';
    }
    const bool isStartable = !id.empty() && ((id[0] >= 'a' && id[0] <= 'z') ||
                                             (id[0] >= 'A' && id[0] <= 'Z') || id[0] == '_');
    return isStartable ? id : "_" + id;
}

}  // namespace

std::string xmlText(std::string_view text) {
    std::string plain;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '&') {
            plain += "&amp;";
        } else if (c == '<') {
            plain += "&lt;";
        } else if (c == '>') {
            plain += "&gt;";
        } else if (c == '"') {
            plain += "&quot;";
        } else if (byte >= 0x20) {
            plain += c;
        } else if (c == '\n' || c == '\t') {
            plain += ' ';
        }
    }
    return plain;
}

SvgWriter::SvgWriter(const Box& page, std::string_view title, std::string_view moreStyle)
    : page_(page) {
    const std::string width = mm(page.widthMm());
    const std::string height = mm(page.heightMm());
    svg_ = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    svg_ += "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" +
            height + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n";
    svg_ += "  <title>" + xmlText(title) + "</title>\n";
    svg_ += "  <style>" + xmlText(kStyle) + xmlText(moreStyle) + "</style>\n";
}

void SvgWriter::indent() { svg_.append(2 * depth_, ' '); }

std::string SvgWriter::coordinates(const Point& point) const {
    return mm(point.x() - page_.lowest.x()) + " " + mm(page_.highest.y() - point.y());
}

void SvgWriter::beginGroup(std::string_view id, std::string_view label) {
    indent();
    svg_ += "<g id=\"" + identifier(id) + "\"";
    if (!label.empty()) svg_ += " aria-label=\"" + xmlText(label) + "\"";
    svg_ += ">\n";
    ++depth_;
}

void SvgWriter::beginPanel(std::string_view id, std::string_view label, const Point& origin) {
    indent();
    svg_ += "<g id=\"" + identifier(id) + "\" aria-label=\"" + xmlText(label) +
            "\" data-origin=\"" + coordinates(origin) + "\">\n";
    ++depth_;
}

void SvgWriter::endGroup() {
    --depth_;
    indent();
    svg_ += "</g>\n";
}

void SvgWriter::path(std::string_view cssClass, const Path& path, bool isClosed) {
    if (path.isEmpty()) return;
    indent();
    svg_ += "<path class=\"" + std::string(cssClass) + "\" d=\"M " + coordinates(path.start());
    for (const Cubic& piece : path.pieces) {
        svg_ += " C " + coordinates(piece.p1) + " " + coordinates(piece.p2) + " " +
                coordinates(piece.p3);
    }
    svg_ += isClosed ? " Z\"/>\n" : "\"/>\n";
}

void SvgWriter::line(std::string_view cssClass, const Point& a, const Point& b) {
    const double top = page_.highest.y();
    const double left = page_.lowest.x();
    indent();
    svg_ += "<line class=\"" + std::string(cssClass) + "\" x1=\"" + mm(a.x() - left) + "\" y1=\"" +
            mm(top - a.y()) + "\" x2=\"" + mm(b.x() - left) + "\" y2=\"" + mm(top - b.y()) +
            "\"/>\n";
}

void SvgWriter::cross(std::string_view cssClass, const Point& at, double armMm) {
    line(cssClass, at - Vector(armMm, 0), at + Vector(armMm, 0));
    line(cssClass, at - Vector(0, armMm), at + Vector(0, armMm));
}

void SvgWriter::text(std::string_view text, const Point& at, double heightMm) {
    indent();
    svg_ += "<text x=\"" + mm(at.x() - page_.lowest.x()) + "\" y=\"" +
            mm(page_.highest.y() - at.y()) + "\" font-size=\"" + mm(heightMm) + "\">" +
            xmlText(text) + "</text>\n";
}

std::string SvgWriter::finished() {
    svg_ += "</svg>\n";
    return std::move(svg_);
}

}  // namespace coutil::interchange
