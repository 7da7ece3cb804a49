#pragma once

// Every tolerance of the project: name, value, unit, reason. Nothing else may hold a bare epsilon.
namespace coutil::tolerance {

// Two points nearer than this are one point: a tenth of the ink grid.
inline constexpr double kSamePointMm = 1e-4;
// Ink lies on this grid; also the grid of the clean-up of cutting lines.
inline constexpr double kInkGridMm = 1e-3;
// On the ink grid the end direction of a piece shorter than this could turn by more than an eighth
// of a degree; such a piece takes over a stretch of its neighbour until it is this long.
inline constexpr double kShortForInkMm = 1;
inline constexpr double kLongForInkMm = 3;
// Chord error where curves become polylines on the way to paper or to a clean-up.
inline constexpr double kCutFlatnessMm = 0.005;
// Chord error of curves in exchange files: half of the 0.1 mm that ASTM D6673 grants.
inline constexpr double kExchangeChordMm = 0.05;
// Directions within a degree of each other go straight on; anything sharper is a corner there.
inline constexpr double kStraightOnCosine = 0.99985;
// Girths and paired edges hold to this (the promise of the drafting rules).
inline constexpr double kGirthMm = 0.01;
inline constexpr double kSeamPairMm = 0.01;
// Top and bottom lines are one line across a seam when their directions agree to this.
inline constexpr double kSmoothAcrossSeamDeg = 0.5;
// A panel narrower than this between its edges cannot be sewn.
inline constexpr double kNarrowestPanelMm = 12;
// Printed lines follow the pattern to this on every sheet.
inline constexpr double kPrintedMm = 0.05;
// Half the widest pen of the sheets: a line this near to a sheet's edge would be cut in half.
inline constexpr double kHalfPenMm = 0.25;
// Tracings on the sheets keep at least this from each other, room for scissors.
inline constexpr double kBetweenTracingsMm = 2;
// Chord error where outlines become cells of a search; the cells are grown by as much.
inline constexpr double kSearchFlatnessMm = 0.1;

// The first derivative of a piece counts as vanished below this share of the longest leg of its
// control polygon: seven digits above rounding, far below any drawn direction.
inline constexpr double kVanishedSpeedShare = 1e-9;
// A part of a piece shorter than this is measured without further halving (cusps).
inline constexpr double kShortestMeasuredMm = 1e-10;
// A length along a path is found again to this.
inline constexpr double kAlongPathMm = 1e-10;
// Curves nearer than this touch. A thousandth of kSamePointMm; rounding at 2 m is near 1e-12.
inline constexpr double kTouchMm = 1e-7;
// Newton's method has settled when both parameters move by less: 2e-8 mm on a piece of 2 m, and
// what is left shrinks with the square.
inline constexpr double kSettledStep = 1e-11;
// Contacts of two pieces nearer than this in parameter belong together.
inline constexpr double kNeighbourParameter = 1e-6;
// Pieces of an altered edge become one again when the one leaves them by less: a tenth of the ink
// grid, far below a pen.
inline constexpr double kMergedPieceMm = 1e-4;
// The middle of a piece of a moved edge keeps to the true moved curve by this.
inline constexpr double kMovedEdgeMm = 0.002;
// An altered edge this near to its wanted length stays as it is: a thousand alterations later the
// two edges of a seam still agree to kSeamPairMm.
inline constexpr double kSettledLengthMm = 1e-6;
// An alteration and the one that takes it back leave the outlines where they were to this: half a
// pen (the promise of the fit history).
inline constexpr double kTakenBackMm = 0.05;
// Directions are parallel below this sine: 1e-6 mm in a metre.
inline constexpr double kParallelSine = 1e-9;
// Curves that differ by less in curvature part by 1e-5 mm in 100 mm: no touching point is named.
inline constexpr double kSameCurvaturePerMm = 1e-8;
// Meetings nearer than this along both paths are one.
inline constexpr double kSameMeetingMm = 1e-6;
// An end of a piece this near a level line lies on it: rounding of coordinates up to 10 m.
inline constexpr double kOnLevelMm = 1e-9;
// Roots of polynomials in Bernstein form are parted down to this parameter width.
inline constexpr double kRootWidth = 1e-13;
// Below this share of the largest coefficient a polynomial is rounding noise: a few units in the
// last place. A double root blurs over the square root of it.
inline constexpr double kRootNoise = 1e-15;
inline constexpr double kNoiseRootWidth = 1e-6;

// Two linear equations count as one when their determinant is below this share of the product of
// the diagonal.
inline constexpr double kDependentShare = 1e-12;
// Cutting lines keep their distance from the sewing line to this, outside corner zones.
inline constexpr double kOffsetMm = 0.01;
// Chord error of the chains an offset is made of: kCutFlatnessMm less what the ink grid moves.
inline constexpr double kOffsetChordMm = 0.004;
// How far an offset as cubic pieces may leave the one as chains of points: kOffsetMm less
// kCutFlatnessMm and the ink grid.
inline constexpr double kOffsetFitMm = 0.004;
// Directions that differ by less (sine of the angle) go smoothly on: 0.01 um to the side in 10 mm.
inline constexpr double kSmoothTurn = 1e-6;
// Loose parts of a clean-up smaller than this are rounding, not cloth.
inline constexpr double kSliverMm2 = 0.01;
// A place this deep in a neighbour's allowance has no cutting line of its own; a sewing line
// without one along more than this is told.
inline constexpr double kBuriedMm = 0.02;
inline constexpr double kLostStretchMm = 0.5;

// The fair curve solver: a constraint counts as broken beyond this share of its own scale, and as
// dependent on the others when less than this share of it is its own. Rounding of systems of some
// thirty unknowns stays three digits below.
inline constexpr double kConstraintRelative = 1e-8;
inline constexpr double kDependentRelative = 1e-8;
// A cutting pattern pays when its pieces are worth more than the bar by this share: above the
// rounding of prices to whole numbers (2^-32), far below one bar in the largest plan.
inline constexpr double kPricedShare = 1e-9;
// Polylines of edges in the checks of a pattern: a thousandth of the narrowest panel.
inline constexpr double kCheckFlatnessMm = 0.01;
// Shares that should sum to 1 may have been typed as whole percents of up to seven seams.
inline constexpr double kShareSum = 0.0301;

// Comparing two patterns: the largest distance of two edges is found to this, and edges that lie
// this near to each other are the same stretch (ten steps of the ink grid).
inline constexpr double kCompareSearchMm = 0.01;
inline constexpr double kSharedStretchMm = 0.01;
// A line farther than this from the old one has changed: what a printed line may be off, half of
// the thinnest pen of the sheets.
inline constexpr double kChangedLineMm = 0.05;

// Checks of a fitted pattern. A curve goes on smoothly within a degree (common practice for lines
// of a pattern), a tape reads half a millimetre, nobody sees a tenth of one between two sides.
inline constexpr double kKinkDeg = 1;
inline constexpr double kGirthToldMm = 0.5;
inline constexpr double kSidesAlikeMm = 0.1;
// Edges of a seam that differ by more cannot be matched (common practice in corsetry).
inline constexpr double kSewableSeamMm = 1;
// A channel in a seam's own allowance wants a chord error below 3 mm in any 100 mm, or a radius
// over 250 mm (common practice).
inline constexpr double kChannelStretchMm = 100;
inline constexpr double kChannelChordMm = 3;
inline constexpr double kChannelRadiusMm = 250;

}  // namespace coutil::tolerance
