#include "tests/core/geometry/geos_judge.h"

#include <cmath>

#include <geos_c.h>

namespace coutil::test {

namespace {

GEOSContextHandle_t geos() {
    static const GEOSContextHandle_t context = GEOS_init_r();
    return context;
}

GEOSCoordSequence* sequenceOf(const std::vector<Point>& points, bool isClosed) {
    const std::size_t count = points.size() + (isClosed ? 1 : 0);
    GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(geos(), unsigned(count), 2);
    for (std::size_t k = 0; k < count; ++k) {
        const Point& p = points[k % points.size()];
        GEOSCoordSeq_setXY_r(geos(), sequence, unsigned(k), p.x(), p.y());
    }
    return sequence;
}

GeosShape pointShape(const Point& p) {
    return GeosShape(GEOSGeom_createPointFromXY_r(geos(), p.x(), p.y()));
}

}  // namespace

void GeosDeleter::operator()(GEOSGeom_t* geometry) const { GEOSGeom_destroy_r(geos(), geometry); }
void GeosDeleter::operator()(const GEOSPrepGeom_t* prepared) const {
    GEOSPreparedGeom_destroy_r(geos(), prepared);
}

GeosShape geosPolygon(const std::vector<Point>& ring) {
    GEOSGeometry* shell = GEOSGeom_createLinearRing_r(geos(), sequenceOf(ring, true));
    return GeosShape(GEOSGeom_createPolygon_r(geos(), shell, nullptr, 0));
}

GeosShape geosLine(const std::vector<Point>& points) {
    return GeosShape(GEOSGeom_createLineString_r(geos(), sequenceOf(points, false)));
}

std::string geosFault(const GeosShape& shape) {
    if (GEOSisValid_r(geos(), shape.get()) == 1) return {};
    char* reason = GEOSisValidReason_r(geos(), shape.get());
    std::string text = reason ? reason : "no answer";
    GEOSFree_r(geos(), reason);
    return text;
}

bool geosContains(const GeosShape& polygon, const Point& p) {
    return GEOSContains_r(geos(), polygon.get(), pointShape(p).get()) == 1;
}

double geosAreaMm2(const GeosShape& shape) {
    double area = std::nan("");
    if (shape) GEOSArea_r(geos(), shape.get(), &area);
    return area;
}

double geosAreaOutsideMm2(const GeosShape& inner, const GeosShape& outer) {
    return geosAreaMm2(GeosShape(GEOSDifference_r(geos(), inner.get(), outer.get())));
}

GeosShape geosCommonPart(const GeosShape& a, const GeosShape& b) {
    return GeosShape(GEOSIntersection_r(geos(), a.get(), b.get()));
}

double geosMitredAreaMm2(const GeosShape& polygon, double widthMm, double mitreLimit) {
    constexpr int kQuarterSegments = 16;
    const GeosShape wide(GEOSBufferWithStyle_r(geos(), polygon.get(), widthMm, kQuarterSegments,
                                               GEOSBUF_CAP_FLAT, GEOSBUF_JOIN_MITRE, mitreLimit));
    const GEOSGeometry* shell = GEOSGetExteriorRing_r(geos(), wide.get());
    if (!shell) return std::nan("");
    GEOSGeometry* copy = GEOSGeom_clone_r(geos(), shell);
    return geosAreaMm2(GeosShape(GEOSGeom_createPolygon_r(geos(), copy, nullptr, 0)));
}

GeosTape::GeosTape(const std::vector<Point>& points)
    : line_(geosLine(points)), prepared_(GEOSPrepare_r(geos(), line_.get())) {}

double GeosTape::distanceMm(const Point& p) const {
    double distance = std::nan("");
    GEOSPreparedDistance_r(geos(), prepared_.get(), pointShape(p).get(), &distance);
    return distance;
}

Point GeosTape::nearest(const Point& p) const {
    GEOSCoordSequence* pair =
        GEOSPreparedNearestPoints_r(geos(), prepared_.get(), pointShape(p).get());
    Point found;
    GEOSCoordSeq_getXY_r(geos(), pair, 0, &found.x(), &found.y());
    GEOSCoordSeq_destroy_r(geos(), pair);
    return found;
}

bool GeosTape::isMetBetween(const Point& a, const Point& b) const {
    return GEOSPreparedIntersects_r(geos(), prepared_.get(), geosLine({a, b}).get()) == 1;
}

}  // namespace coutil::test
