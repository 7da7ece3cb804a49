#pragma once

#include <QString>
#include <string>

#include "core/block/style.h"
#include "core/measurements/measurement.h"
#include "core/pattern/pattern.h"
#include "core/units/length.h"

// Names for people, translated; the keys of core stay in files.
namespace coutil {

[[nodiscard]] QString measurementTerm(Measurement id);  // "Bust girth"
[[nodiscard]] QString measurementHow(Measurement id);   // how to take it, one or two sentences
[[nodiscard]] QString levelName(
    const std::string& key);  // "waist"; the maker's own names pass through
[[nodiscard]] QString edgeName(const std::string& name);  // "centre front", "seam 1-2", ...
// "Lacing gap" for an entry of a style file ("lacing_gap", "ease.waist"); empty for other texts.
[[nodiscard]] QString styleTerm(const std::string& key);
[[nodiscard]] QString unitName(LengthUnit unit);  // "cm"
// A length in the maker's unit with its name, number written as the user's language does.
[[nodiscard]] QString lengthText(double mm, LengthUnit unit);

}  // namespace coutil
