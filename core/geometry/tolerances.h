#pragma once

// Every tolerance of the project: name, value, unit, reason. Nothing else may hold a bare epsilon.
namespace coutil::tolerance {

// Two points nearer than this are one point: a tenth of the ink grid.
inline constexpr double kSamePointMm = 1e-4;
// Ink lies on this grid; also the grid of the clean-up of cutting lines.
inline constexpr double kInkGridMm = 1e-3;
// Chord error where curves become polylines on the way to paper or to a clean-up.
inline constexpr double kCutFlatnessMm = 0.005;
// Girths and paired edges hold to this (the promise of the drafting rules).
inline constexpr double kGirthMm = 0.01;
inline constexpr double kSeamPairMm = 0.01;
// Top and bottom lines are one line across a seam when their directions agree to this.
inline constexpr double kSmoothAcrossSeamDeg = 0.5;
// A panel narrower than this between its edges cannot be sewn.
inline constexpr double kNarrowestPanelMm = 12;
// Printed lines follow the pattern to this on every sheet.
inline constexpr double kPrintedMm = 0.05;

}  // namespace coutil::tolerance
