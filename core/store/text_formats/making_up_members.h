#pragma once

#include "core/making_up/making_up_choices.h"
#include "core/store/text_formats/style_names.h"
#include "core/tracing/tracing_choices.h"

// What the choices of making-up and tracing are called in files: one list for reading and writing.
// `Members` is a ChoiceReader or a ChoiceWriter, `Choices` the value or the constant value.
namespace coutil::text_formats {

[[nodiscard]] const std::map<std::string, BoneKind>& boneKindNames();
[[nodiscard]] const std::map<std::string, ChannelCarrier>& carrierNames();
[[nodiscard]] const std::map<std::string, PanelSide>& panelSideNames();
[[nodiscard]] const std::map<std::string, NotchShape>& notchShapeNames();
[[nodiscard]] const std::map<std::string, LinesShown>& linesShownNames();

template <class Members, class Choices>
void passBone(Members& m, Choices& bone) {
    m.choice("kind", boneKindNames(), bone.kind);
    m.length("width", bone.widthMm);
}

template <class Members, class Choices>
void passChannelByHand(Members& m, Choices& channel) {
    m.text("channel", channel.channel);
    m.choice("side", panelSideNames(), channel.side);
    m.truth("on", channel.isOn);
    m.object("bone", channel.bone, [](auto& inner, auto& bone) { passBone(inner, bone); });
    m.choice("carrier", carrierNames(), channel.carrier);
    m.length("bottom", channel.bottomMm);
    m.length("top", channel.topMm);
    m.object("line", channel.line, [](auto& inner, auto& line) {
        inner.text("panel", line.panel);
        inner.length("bottom_along", line.bottomAlongMm);
        inner.length("top_along", line.topAlongMm);
    });
}

template <class Members, class Choices>
void passChannels(Members& m, Choices& channels) {
    const auto bone = [](auto& inner, auto& type) { passBone(inner, type); };
    m.length("clearance", channels.clearanceMm);
    m.object("straight_seam", channels.straightSeam, [](auto& inner, auto& rule) {
        inner.length("chord_error", rule.chordErrorMm);
        inner.length("stretch", rule.stretchMm);
        inner.length("radius", rule.radiusMm);
    });
    m.truth("seams", channels.hasSeams);
    m.truth("panel_middles", channels.hasPanelMiddles);
    m.truth("bust_support", channels.hasBustSupport);
    m.truth("beside_eyelets", channels.hasBesideEyelets);
    m.truth("front", channels.hasFront);
    m.object("seam_bone", channels.seamBone, bone);
    m.object("panel_bone", channels.panelBone, bone);
    m.object("bust_bone", channels.bustBone, bone);
    m.object("back_bone", channels.backBone, bone);
    m.object("front_bone", channels.frontBone, bone);
    m.list("by_hand", channels.byHand,
           [](auto& inner, auto& channel) { passChannelByHand(inner, channel); });
}

template <class Members, class Choices>
void passBones(Members& m, Choices& bones) {
    m.length("free_at_bound", bones.freeAtBoundMm);
    m.length("free_at_turned", bones.freeAtTurnedMm);
    m.length("step", bones.stepMm);
    m.length("shortest", bones.shortestMm);
    m.length("flat_steel_radius", bones.flatSteelRadiusMm);
    m.length("spiral_steel_radius", bones.spiralSteelRadiusMm);
    m.length("synthetic_radius", bones.syntheticRadiusMm);
    m.list("stock", bones.stock, [](auto& inner, auto& stock) {
        passBone(inner, stock.type);
        inner.numbers("lengths", stock.lengthsMm);
        inner.length("loss_per_cut", stock.lossPerCutMm);
    });
}

template <class Members, class Choices>
void passEyelets(Members& m, Choices& eyelets) {
    m.length("pitch", eyelets.pitchMm);
    m.length("end", eyelets.endMm);
    m.length("waist_pair", eyelets.waistPairMm);
    m.length("column", eyelets.columnMm);
    m.length("bone_space", eyelets.boneSpaceMm);
    m.length("bone_channel", eyelets.boneChannelMm);
    m.length("diameter", eyelets.diameterMm);
    m.length("opened_gap", eyelets.openedGapMm);
    m.length("tail", eyelets.tailMm);
}

template <class Members, class Choices>
void passLayer(Members& m, Choices& layer) {
    m.text("key", layer.key);
    m.truth("made", layer.isMade);
    m.texts("panels", layer.panels);
    m.length("seam_allowance", layer.seamAllowanceMm);
    m.truth("edges_bound", layer.areEdgesBound);
    m.list("additions", layer.additions, [](auto& inner, auto& addition) {
        inner.text("panel", addition.panel);
        inner.text("edge", addition.edge);
        inner.length("width", addition.widthMm);
    });
    m.length("cloth_width", layer.clothWidthMm);
}

template <class Members, class Choices>
void passMakingUp(Members& m, Choices& choices) {
    m.object("channels", choices.channels, [](auto& i, auto& each) { passChannels(i, each); });
    m.object("bones", choices.bones, [](auto& i, auto& each) { passBones(i, each); });
    m.object("eyelets", choices.eyelets, [](auto& i, auto& each) { passEyelets(i, each); });
    m.object("busk", choices.busk, [](auto& inner, auto& busk) {
        inner.numbers("lengths", busk.lengthsMm);
        inner.length("free_at_end", busk.freeAtEndMm);
        inner.length("width", busk.widthMm);
        inner.length("end_stud", busk.endStudMm);
        inner.length("stud_pitch", busk.studPitchMm);
    });
    m.object("waist_tape", choices.waistTape, [](auto& inner, auto& tape) {
        inner.truth("wanted", tape.isWanted);
        inner.length("width", tape.widthMm);
        inner.length("turning", tape.turningMm);
    });
    m.object("binding", choices.binding, [](auto& inner, auto& binding) {
        inner.length("finished", binding.finishedMm);
        inner.length("turning", binding.turningMm);
    });
    m.list("layers", choices.layers, [](auto& inner, auto& layer) { passLayer(inner, layer); });
    m.object("materials", choices.materials, [](auto& inner, auto& materials) {
        inner.number("spare_part", materials.sparePart);
        inner.text("currency", materials.currency);
        inner.numbersByName("prices", materials.priceByKey);
    });
}

template <class Members, class Choices>
void passTracing(Members& m, Choices& choices) {
    m.text("layer", choices.layer);
    m.choice("notches", notchShapeNames(), choices.notchShape);
    m.choice("lines", linesShownNames(), choices.lines);
    m.list("by_hand", choices.byHand, [](auto& inner, auto& tracing) {
        inner.text("panel", tracing.panel);
        inner.choice("side", panelSideNames(), tracing.side);
        inner.number("turn", tracing.turnDeg);
        inner.point("label_at", tracing.labelAt);
        inner.number("label_turn", tracing.labelTurnDeg);
        inner.number("label_scale", tracing.labelScale);
    });
}

}  // namespace coutil::text_formats
