#pragma once

#include <string_view>
#include <vector>

namespace coutil {

// Every problem any stage can report. Add a line in the section of its stage; the text key is what
// JSON shows; ui/words/problem_sentences has a file a stage with the sentences for people (a test
// proves each has one).
#define COUTIL_PROBLEM_CODES(X)                           \
    /* units */                                           \
    X(lengthUnreadable, "length_unreadable")              \
    X(lengthNegative, "length_negative")                  \
    X(lengthOutOfRange, "length_out_of_range")            \
    /* geometry */                                        \
    X(offsetLostPart, "offset_lost_part")                 \
    X(offsetTooNear, "offset_too_near")                   \
    X(offsetTooFar, "offset_too_far")                     \
    X(outlineOpen, "outline_open")                        \
    X(outlineCrossesItself, "outline_crosses_itself")     \
    /* measurements */                                    \
    X(measurementMissing, "measurement_missing")          \
    X(measurementImpossible, "measurement_impossible")    \
    X(measurementImprobable, "measurement_improbable")    \
    X(measurementsContradict, "measurements_contradict")  \
    X(measurementUnknown, "measurement_unknown")          \
    /* block */                                           \
    X(styleValueOutOfRange, "style_value_out_of_range")   \
    X(styleUnknownKey, "style_unknown_key")               \
    X(panelTooNarrow, "panel_too_narrow")                 \
    X(levelOrderWrong, "level_order_wrong")               \
    X(edgeHeightImpossible, "edge_height_impossible")     \
    X(reductionLarge, "reduction_large")                  \
    X(girthTargetMissed, "girth_target_missed")           \
    X(seamLengthsDiffer, "seam_lengths_differ")           \
    X(lineBrokenAcrossSeam, "line_broken_across_seam")    \
    /* alterations */                                     \
    X(alterationUnfit, "alteration_unfit")                \
    X(alterationTooLarge, "alteration_too_large")         \
    X(alterationBadValue, "alteration_bad_value")         \
    X(alterationBreaksPanel, "alteration_breaks_panel")   \
    X(joinLeavesGap, "join_leaves_gap")                   \
    X(markUnfit, "mark_unfit")                            \
    /* checks of a fitted pattern */                      \
    X(seamTooCurved, "seam_too_curved")                   \
    X(kinkInCurve, "kink_in_curve")                       \
    X(sidesDiffer, "sides_differ")                        \
    X(girthOffTarget, "girth_off_target")                 \
    X(foldBecomesSeam, "fold_becomes_seam")               \
    /* revisions */                                       \
    X(revisionTampered, "revision_tampered")              \
    X(revisionParentMissing, "revision_parent_missing")   \
    X(confirmRefused, "confirm_refused")                  \
    X(pencilMissing, "pencil_missing")                    \
    X(rulesChanged, "rules_changed")                      \
    X(fittingUnknown, "fitting_unknown")                  \
    X(photoUnreadable, "photo_unreadable")                \
    X(photoTooLarge, "photo_too_large")                   \
    /* making-up */                                       \
    X(makingUpOutOfRange, "making_up_out_of_range")       \
    X(choiceUnfit, "choice_unfit")                        \
    X(channelImpossible, "channel_impossible")            \
    X(seamTooCurvedForBone, "seam_too_curved_for_bone")   \
    X(allowanceTooNarrow, "allowance_too_narrow")         \
    X(boneTooShort, "bone_too_short")                     \
    X(boneKindTooStiff, "bone_kind_too_stiff")            \
    X(pieceLongerThanStock, "piece_longer_than_stock")    \
    X(stockMissing, "stock_missing")                      \
    X(eyeletsDoNotFit, "eyelets_do_not_fit")              \
    X(eyeletRoomTooNarrow, "eyelet_room_too_narrow")      \
    X(buskDoesNotFit, "busk_does_not_fit")                \
    X(tapeMissesPanel, "tape_misses_panel")               \
    X(layerPanelUnknown, "layer_panel_unknown")           \
    X(layerUnknown, "layer_unknown")                      \
    /* tracing completed */                               \
    X(labelDoesNotFit, "label_does_not_fit")              \
    X(cornerDoesNotFold, "corner_does_not_fold")          \
    /* sheets */                                          \
    X(paperUnknown, "paper_unknown")                      \
    X(paperTooSmall, "paper_too_small")                   \
    X(sheetOptionOutOfRange, "sheet_option_out_of_range") \
    X(tooManySheets, "too_many_sheets")                   \
    X(nothingChanged, "nothing_changed")                  \
    /* store */                                           \
    X(fileMissing, "file_missing")                        \
    X(fileUnreadable, "file_unreadable")                  \
    X(fileUnwritable, "file_unwritable")                  \
    X(fileForeign, "file_foreign")                        \
    X(fileDamaged, "file_damaged")                        \
    X(fileNewer, "file_newer")                            \
    X(diskFull, "disk_full")                              \
    X(jsonBroken, "json_broken")                          \
    X(jsonWrongKind, "json_wrong_kind")                   \
    X(jsonUnknownKey, "json_unknown_key")                 \
    X(jsonBadValue, "json_bad_value")                     \
    X(jsonTooLarge, "json_too_large")                     \
    X(jsonKeyTwice, "json_key_twice")                     \
    X(jsonKeyMissing, "json_key_missing")                 \
    X(jsonWrongVersion, "json_wrong_version")             \
    X(jsonWantsText, "json_wants_text")                   \
    X(jsonWantsTruth, "json_wants_truth")                 \
    X(jsonWantsNumber, "json_wants_number")               \
    X(jsonWantsWholeNumber, "json_wants_whole_number")    \
    X(jsonWantsNumberList, "json_wants_number_list")      \
    X(jsonWantsPairs, "json_wants_pairs")                 \
    X(jsonWantsTextList, "json_wants_text_list")          \
    X(jsonWantsLength, "json_wants_length")               \
    X(jsonWantsObject, "json_wants_object")               \
    X(jsonWantsObjectList, "json_wants_object_list")      \
    X(jsonWantsChoice, "json_wants_choice")               \
    X(dateUnreadable, "date_unreadable")                  \
    X(garmentTaken, "garment_taken")                      \
    X(garmentUnknown, "garment_unknown")                  \
    X(revisionUnknown, "revision_unknown")                \
    /* drawings that come back */                         \
    X(drawingUnreadable, "drawing_unreadable")            \
    X(drawingForeign, "drawing_foreign")                  \
    X(drawingTooLarge, "drawing_too_large")               \
    X(drawingPanelMissing, "drawing_panel_missing")       \
    X(drawingPanelUnknown, "drawing_panel_unknown")       \
    X(drawingPanelOff, "drawing_panel_off")               \
    X(drawingScaled, "drawing_scaled")                    \
    /* command line */                                    \
    X(callUnknown, "call_unknown")                        \
    X(callIncomplete, "call_incomplete")                  \
    X(optionUnknown, "option_unknown")                    \
    X(optionBadValue, "option_bad_value")                 \
    X(optionWithoutValue, "option_without_value")         \
    X(optionTwice, "option_twice")                        \
    X(optionsExclude, "options_exclude")                  \
    X(operandUnexpected, "operand_unexpected")            \
    X(displayMissing, "display_missing")

enum class ProblemCode {
#define COUTIL_CODE_NAME(name, key) name,
    COUTIL_PROBLEM_CODES(COUTIL_CODE_NAME)
#undef COUTIL_CODE_NAME
};

// The stable key of a code, as written to JSON.
[[nodiscard]] std::string_view keyOf(ProblemCode code);

// All codes, in the order of their definition.
[[nodiscard]] const std::vector<ProblemCode>& allProblemCodes();

}  // namespace coutil
