#include <QCoreApplication>

#include "ui/words/trade_words.h"

namespace coutil {

namespace {

class MeasurementWords {
    Q_DECLARE_TR_FUNCTIONS(MeasurementWords)

  public:
    static QString term(Measurement id);
    static QString how(Measurement id);
};

QString MeasurementWords::term(Measurement id) {
    switch (id) {
        case Measurement::bustGirth:
            return tr("Bust girth");
        case Measurement::underBustGirth:
            return tr("Under-bust girth");
        case Measurement::upperChestGirth:
            return tr("Upper chest girth");
        case Measurement::waistGirth:
            return tr("Waist girth");
        case Measurement::topHipGirth:
            return tr("Top hip girth");
        case Measurement::hipGirth:
            return tr("Hip girth");
        case Measurement::neckBaseGirth:
            return tr("Neck base girth");
        case Measurement::shoulderLength:
            return tr("Shoulder length");
        case Measurement::acrossBackWidth:
            return tr("Across back width");
        case Measurement::acrossFrontWidth:
            return tr("Across front width");
        case Measurement::scyeDepth:
            return tr("Scye depth");
        case Measurement::backNeckToWaist:
            return tr("Back neck to waist");
        case Measurement::frontNeckToWaist:
            return tr("Front neck to waist");
        case Measurement::sideNeckToBustPoint:
            return tr("Side neck to bust point");
        case Measurement::sideNeckOverBustToWaist:
            return tr("Side neck over bust to waist");
        case Measurement::bustPointWidth:
            return tr("Bust point width");
        case Measurement::sideWaistToHip:
            return tr("Side waist to hip");
        case Measurement::upperArmGirth:
            return tr("Upper arm girth");
        case Measurement::stature:
            return tr("Height");
        case Measurement::frontBustArc:
            return tr("Front bust arc");
        case Measurement::waistToUnderBust:
            return tr("Waist to under-bust");
        case Measurement::waistToBust:
            return tr("Waist to bust");
        case Measurement::waistToArmpit:
            return tr("Waist to armpit");
        case Measurement::waistToHighHip:
            return tr("Waist to high hip");
        case Measurement::waistToHip:
            return tr("Waist to hip");
        case Measurement::waistToLap:
            return tr("Waist to lap");
    }
    return {};
}

QString MeasurementWords::how(Measurement id) {
    switch (id) {
        case Measurement::bustGirth:
            return tr(
                "Tape level around the fullest part of the bust, over the bra she will "
                "wear or none. Easy, not tight; let her breathe out.");
        case Measurement::underBustGirth:
            return tr(
                "Tape level around the ribs right under the breasts, snug, at the end of "
                "a breath out.");
        case Measurement::upperChestGirth:
            return tr(
                "Tape under the arms and over the top of the breasts, level at the back. "
                "Arms hang down.");
        case Measurement::waistGirth:
            return tr(
                "Tie a string around the narrowest place and let it settle; measure along "
                "it, snug but not laced in. Leave the string on for the heights.");
        case Measurement::topHipGirth:
            return tr(
                "Tape level around the top of the hip bones, over the belly. Note how far "
                "below the waist string it lies.");
        case Measurement::hipGirth:
            return tr(
                "Tape level around the fullest part of hips and seat, feet together. Note "
                "how far below the waist string it lies.");
        case Measurement::neckBaseGirth:
            return tr(
                "Tape around the root of the neck: over the bone at the back, past both "
                "sides, through the hollow in front.");
        case Measurement::shoulderLength:
            return tr(
                "From the side of the neck, where a necklace lies, along the shoulder to "
                "its outer bone.");
        case Measurement::acrossBackWidth:
            return tr(
                "Straight across the back from arm crease to arm crease, halfway between "
                "shoulder and armpit.");
        case Measurement::acrossFrontWidth:
            return tr(
                "Straight across the front from arm crease to arm crease, halfway between "
                "shoulder and armpit.");
        case Measurement::scyeDepth:
            return tr(
                "Down the middle of the back, from the bone at the neck to a tape held "
                "level under the arms.");
        case Measurement::backNeckToWaist:
            return tr(
                "Down the middle of the back, from the bone at the neck to the waist "
                "string, following the hollow.");
        case Measurement::frontNeckToWaist:
            return tr(
                "Down the middle of the front, from the hollow of the neck to the waist "
                "string, laid flat between the breasts.");
        case Measurement::sideNeckToBustPoint:
            return tr("From the side of the neck straight down to the bust point.");
        case Measurement::sideNeckOverBustToWaist:
            return tr(
                "From the side of the neck over the bust point and on to the waist "
                "string, close under the breast.");
        case Measurement::bustPointWidth:
            return tr(
                "Straight across from one bust point to the other, without dipping "
                "between them.");
        case Measurement::sideWaistToHip:
            return tr(
                "Down the side over the curve of the hip, from the waist string to the "
                "level of the hip girth.");
        case Measurement::upperArmGirth:
            return tr("Around the fullest part of the upper arm, arm hanging, muscle at ease.");
        case Measurement::stature:
            return tr(
                "Standing straight without shoes, back to a wall, from the floor to the "
                "top of the head.");
        case Measurement::frontBustArc:
            return tr(
                "Over the fullest part of the bust, from side seam to side seam: the "
                "front's part of the bust girth. Agree first where the side seams run.");
        case Measurement::waistToUnderBust:
            return tr(
                "At the front, straight up from the waist string to the crease under the "
                "breast. Measure the height, not along a curve.");
        case Measurement::waistToBust:
            return tr(
                "Straight up from the waist string to the height of the bust point: hold "
                "a ruler upright beside her.");
        case Measurement::waistToArmpit:
            return tr(
                "At the side, straight up from the waist string to a pencil held level "
                "under the arm.");
        case Measurement::waistToHighHip:
            return tr(
                "At the side, straight down from the waist string to where the top hip "
                "girth was taken.");
        case Measurement::waistToHip:
            return tr(
                "At the side, straight down from the waist string to where the hip girth "
                "was taken.");
        case Measurement::waistToLap:
            return tr(
                "Seated upright on a hard chair: from the waist string down the front to "
                "the lap. The corset's front must not be longer.");
    }
    return {};
}

}  // namespace

QString measurementTerm(Measurement id) { return MeasurementWords::term(id); }

QString measurementHow(Measurement id) { return MeasurementWords::how(id); }

}  // namespace coutil
