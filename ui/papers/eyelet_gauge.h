#pragma once

#include <vector>

#include "core/units/length.h"

namespace coutil {

class PageWriter;
struct Eyelets;

// The eyelets of one back edge true to scale, to lay beside the edge and mark through: the finished
// edge, the eyelets in their column, ends and waist mark, figures from the waist. What is longer
// than the page goes on beside it, from the same mark on. Returns where the next may begin.
double drawEyeletGauge(PageWriter& page, const Eyelets& eyelets, double columnMm, double diameterMm,
                       LengthUnit unit, double topMm);

}  // namespace coutil
