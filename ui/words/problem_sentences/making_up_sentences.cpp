#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofMakingUp(ProblemCode code) {
    switch (code) {
        case ProblemCode::makingUpOutOfRange:
            return tr(
                "Making-up: “{path}” cannot be {value}[: choose one between {lowest} and "
                "{highest}].");
        case ProblemCode::choiceUnfit:
            return tr(
                "Making-up: “{path}” is not in this pattern[ ({text})]; choose another channel or "
                "panel, or take the choice out.");
        case ProblemCode::channelImpossible:
            return tr(
                "There is no room for the channel “{path}”[ in panel {panel}][: it would be "
                "{value} long and needs {limit}]; switch it off or move it.");
        case ProblemCode::seamTooCurvedForBone:
            return tr(
                "{subject} is too curved to be folded to a channel[: {value} off the straight, "
                "{limit} is the most]; choose tape for “{path}”.");
        case ProblemCode::allowanceTooNarrow:
            return tr(
                "The allowance of “{path}” is {value}, and its channel needs {limit}; leave it to "
                "the channel, or choose tape.");
        case ProblemCode::boneTooShort:
            return tr(
                "The channel “{path}” has room for a bone of {value}, and {limit} is the shortest "
                "of its kind; switch the channel off, or choose another bone.");
        case ProblemCode::boneKindTooStiff:
            return tr(
                "The channel “{path}” bends to a radius of {value}, too much for this kind of bone "
                "({limit}); choose a bone that bends sideways.");
        case ProblemCode::stockMissing:
            return tr(
                "No stock length is known for the bones of “{path}”; add the rods or the reel they "
                "are cut from.");
        case ProblemCode::pieceLongerThanStock:
            return tr(
                "A piece of {value} cannot be cut from stock of {limit}; choose a longer stock "
                "length or a reel.");
        case ProblemCode::eyeletsDoNotFit:
            return tr(
                "The laced edges share {value}, and the eyelets need at least {limit}; choose a "
                "smaller pitch or shorter distances at the ends.");
        case ProblemCode::eyeletRoomTooNarrow:
            return tr(
                "The eyelets with a bone on both sides have {value}[ on panel {panel}] and need "
                "{limit}; choose narrower bones, or move the column.");
        case ProblemCode::buskDoesNotFit:
            return tr(
                "The front edge has room for a busk of {value}, and the shortest in stock has "
                "{limit}; choose a shorter busk, less clearance or another front.");
        case ProblemCode::tapeMissesPanel:
            return tr(
                "The waist does not cross panel {panel}, so the waist tape cannot be caught "
                "there; look at its edges at the waist.");
        default:
            return ofLayersAndTracings(code);
    }
}

QString ProblemSentence::ofLayersAndTracings(ProblemCode code) {
    switch (code) {
        case ProblemCode::layerPanelUnknown:
            return tr(
                "Layer “{path}” asks for “{text}”, which this pattern does not have; correct the "
                "layer.");
        case ProblemCode::layerUnknown:
            return tr("There is no layer “{path}” in this garment; choose one of its layers.");
        case ProblemCode::labelDoesNotFit:
            return tr(
                "The label of panel {panel} does not fit clear of its lines; make it smaller or "
                "move it.");
        case ProblemCode::cornerDoesNotFold:
            return tr(
                "The allowance at a corner of {subject}[ in panel {panel}] does not lie flat when "
                "it is folded; make it narrower there.");
        default:
            return {};
    }
}

}  // namespace coutil
