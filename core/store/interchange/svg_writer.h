#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/geometry/path.h"

namespace coutil::interchange {

// Collects an SVG 1.1 document in true millimetres: lengths given here are mm with y up, the
// document has y down, its origin at the upper left corner of `page`. Every number has at most four
// decimals.
class SvgWriter {
  public:
    // `moreStyle`: rules for classes of one drawing's own.
    SvgWriter(const Box& page, std::string_view title, std::string_view moreStyle = {});

    // Groups nest; `id` is made a valid name, unique when the given ids are.
    void beginGroup(std::string_view id, std::string_view label = {});
    // A panel's group: says where on the page the panel's own frame has its origin, so that a
    // reader can bring its lines back into it.
    void beginPanel(std::string_view id, std::string_view label, const Point& origin);
    void endGroup();
    void path(std::string_view cssClass, const Path& path, bool isClosed);
    void line(std::string_view cssClass, const Point& a, const Point& b);
    void cross(std::string_view cssClass, const Point& at, double armMm);
    void text(std::string_view text, const Point& at, double heightMm);

    // The whole document; nothing may be added afterwards.
    [[nodiscard]] std::string finished();

  private:
    [[nodiscard]] std::string coordinates(const Point& point) const;
    void indent();

    Box page_;
    std::string svg_;
    std::size_t depth_ = 1;
};

// Text fit for XML: markup escaped, characters XML forbids left out.
[[nodiscard]] std::string xmlText(std::string_view text);

}  // namespace coutil::interchange
