#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/geometry/point.h"

struct GEOSGeom_t;
struct GEOSPrepGeom_t;

namespace coutil::test {

// GEOS (libgeos) as a judge that shares nothing with the project's own geometry.
struct GeosDeleter {
    void operator()(GEOSGeom_t* geometry) const;
    void operator()(const GEOSPrepGeom_t* prepared) const;
};
using GeosShape = std::unique_ptr<GEOSGeom_t, GeosDeleter>;

GeosShape geosPolygon(const std::vector<Point>& ring);  // first point not repeated
GeosShape geosLine(const std::vector<Point>& points);

// Empty for a valid shape, else what is wrong with it and where.
std::string geosFault(const GeosShape& shape);

bool geosContains(const GeosShape& polygon, const Point& p);
double geosAreaMm2(const GeosShape& shape);

// Area of what lies in `inner` and not in `outer`.
double geosAreaOutsideMm2(const GeosShape& inner, const GeosShape& outer);
GeosShape geosCommonPart(const GeosShape& a, const GeosShape& b);

// Area inside the outer boundary of the polygon widened by widthMm with mitred corners.
double geosMitredAreaMm2(const GeosShape& polygon, double widthMm, double mitreLimit);

// A line prepared for many questions.
class GeosTape {
  public:
    explicit GeosTape(const std::vector<Point>& points);
    [[nodiscard]] double distanceMm(const Point& p) const;
    [[nodiscard]] Point nearest(const Point& p) const;
    // Whether the straight way from a to b meets the line.
    [[nodiscard]] bool isMetBetween(const Point& a, const Point& b) const;

  private:
    GeosShape line_;
    std::unique_ptr<const GEOSPrepGeom_t, GeosDeleter> prepared_;
};

}  // namespace coutil::test
