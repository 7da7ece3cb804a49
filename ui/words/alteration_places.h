#pragma once

#include <QString>
#include <string>

#include "core/alterations/alteration.h"
#include "core/units/length.h"

// Where an alteration is, in words; lengths in the maker's unit.
namespace coutil {

// "seam 2-3" for "2-3" and for "seam 2-3"; "centre front"; "top edge".
[[nodiscard]] QString seamName(const std::string& seamOrEdge);
// A seam position as people read it off a tape: "+35 mm", "−90 mm", "the waist" for 0.
[[nodiscard]] QString seamPositionText(double mm, LengthUnit unit);
// "seam 2-3 at +35 mm"; "top edge, 40 mm from its front end".
[[nodiscard]] QString edgePlaceText(const EdgePlace& place, LengthUnit unit);
// "seam 2-3"; "panel 3, 40 mm from its front end".
[[nodiscard]] QString linePlaceText(const LinePlace& place, LengthUnit unit);
// "at the waist"; "80 mm over the waist".
[[nodiscard]] QString heightPlaceText(const HeightPlace& place, LengthUnit unit);
// "3 mm up and 2 mm towards the back"; empty where nothing moves.
[[nodiscard]] QString movedByText(const Vector& mm, LengthUnit unit);

}  // namespace coutil
