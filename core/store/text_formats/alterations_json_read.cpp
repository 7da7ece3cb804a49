#include <array>
#include <cmath>
#include <cstddef>
#include <map>

#include "core/store/text_formats/fit_json.h"
#include "core/store/text_formats/style_json.h"

namespace coutil::text_formats {
namespace {

// A length to fade over, or "edge"; nothing where the key is not there.
std::optional<Fade> readFade(JsonObject& object, std::string_view key) {
    if (!object.has(key)) return std::nullopt;
    if (object.isWord(key, "edge")) return Fade{std::nullopt};
    const auto mm = drawnMm(object, key);
    if (mm && *mm < 0) object.report(ProblemCode::lengthNegative, key, object.asWritten(key));
    return mm ? Fade{mm} : Fade{};
}

// Of both ends: "fade" for the two, and a key for each that wins over it.
void readFades(JsonObject& object, std::string_view firstKey, Fade& first,
               std::string_view secondKey, Fade& second) {
    const Fade common = readFade(object, "fade").value_or(Fade{});
    first = readFade(object, firstKey).value_or(common);
    second = readFade(object, secondKey).value_or(common);
}

void readAmounts(JsonObject& object, std::vector<AmountAt>& amounts) {
    constexpr double kFarthestMm = 1000;
    if (!isThere(object, "amounts")) return;
    const auto pairs = object.pairs("amounts");
    if (!pairs) return;
    if (pairs->empty()) object.report(ProblemCode::jsonKeyMissing, "amounts[0]", "");
    for (const auto& [positionMm, amountMm] : *pairs) {
        amounts.push_back({positionMm, amountMm});
        if (std::abs(positionMm) <= kFarthestMm && std::abs(amountMm) <= kFarthestMm) continue;
        object.report(ProblemCode::lengthOutOfRange,
                      "amounts[" + std::to_string(amounts.size() - 1) + "]",
                      object.asWritten("amounts"));
    }
}

Change readShapeSeam(JsonObject& object) {
    ShapeSeam change;
    change.seam = neededName(object, "seam");
    readAmounts(object, change.amounts);
    readFades(object, "fade_up", change.up, "fade_down", change.down);
    change.frontPart = object.number("split").value_or(change.frontPart);
    if (change.frontPart < 0 || change.frontPart > 1) {
        object.report(ProblemCode::jsonBadValue, "split", object.asWritten("split"));
    }
    return change;
}

std::optional<EdgePlace> readEdgePlace(JsonObject& top, std::string_view key) {
    auto object = top.object(key);
    if (!object) return std::nullopt;
    EdgePlace place;
    place.edge = neededName(*object, "edge");
    place.alongMm = neededMm(*object, "along");
    object->refuseUnknown(ProblemCode::jsonUnknownKey);
    return place;
}

Change readOpenPanel(JsonObject& object) {
    OpenPanel change;
    change.panel = neededName(object, "panel");
    if (isThere(object, "mouth")) {
        change.mouth = readEdgePlace(object, "mouth").value_or(EdgePlace{});
    }
    change.hinge = readEdgePlace(object, "hinge");
    change.slitLengthMm = drawnMm(object, "slit_length");
    if (object.has("hinge") && object.has("slit_length")) {
        object.report(ProblemCode::jsonBadValue, "slit_length", object.asWritten("slit_length"));
    } else if (!object.has("hinge") && !object.has("slit_length")) {
        object.report(ProblemCode::jsonKeyMissing, "hinge", "");
    }
    change.amountMm = neededMm(object, "amount");
    return change;
}

Change readChangeLength(JsonObject& object) {
    ChangeLength change;
    change.at = readHeightPlace(object);
    change.amountMm = neededMm(object, "amount");
    if (auto taper = object.object("taper")) {
        change.taper = Taper{neededName(*taper, "from"), neededName(*taper, "to")};
        taper->refuseUnknown(ProblemCode::jsonUnknownKey);
    }
    return change;
}

Change readReshapeEdge(JsonObject& object) {
    ReshapeEdge change;
    change.line = neededLine(object, "line");
    if (isThere(object, "amounts")) {
        for (JsonObject& entry : object.objects("amounts")) {
            LineAmount amount;
            amount.place = readLinePlace(entry);
            amount.amountMm = neededMm(entry, "amount");
            entry.refuseUnknown(ProblemCode::jsonUnknownKey);
            change.amounts.push_back(std::move(amount));
        }
    }
    readFades(object, "fade_front", change.towardsFront, "fade_back", change.towardsBack);
    return change;
}

Change readMoveLevel(JsonObject& object) {
    MoveLevel change;
    change.level = neededName(object, "level");
    change.upMm = drawnMm(object, "up").value_or(0);
    change.widerMm = drawnMm(object, "wider").value_or(0);
    if (!object.has("up") && !object.has("wider")) (void)isThere(object, "up");
    return change;
}

// [x, y], how far to move.
Vector readBy(JsonObject& object) {
    constexpr double kFarthestMm = 1000;
    if (!isThere(object, "by")) return Vector::Zero();
    const auto by = object.numbers("by");
    if (!by) return Vector::Zero();
    if (by->size() != 2) {
        object.report(ProblemCode::jsonWantsNumberList, "by", object.asWritten("by"));
        return Vector::Zero();
    }
    Vector vector(by->front(), by->back());
    if (vector.cwiseAbs().maxCoeff() > kFarthestMm) {
        object.report(ProblemCode::lengthOutOfRange, "by", object.asWritten("by"));
    }
    return vector;
}

Change readMoveCorner(JsonObject& object) {
    MoveCorner change;
    change.panel = neededName(object, "panel");
    change.edge = neededName(object, "edge");
    change.end = neededLine(object, "end");
    change.byMm = readBy(object);
    return change;
}

Change readMoveHandle(JsonObject& object) {
    MoveHandle change;
    change.panel = neededName(object, "panel");
    change.edge = neededName(object, "edge");
    change.piece = object.wholeNumber("piece").value_or(0);
    if (change.piece < 0) {
        object.report(ProblemCode::jsonBadValue, "piece", object.asWritten("piece"));
    }
    if (isThere(object, "handle")) change.handle = object.wholeNumber("handle").value_or(1);
    if (change.handle != 1 && change.handle != 2) {
        object.report(ProblemCode::jsonBadValue, "handle", object.asWritten("handle"));
    }
    change.byMm = readBy(object);
    return change;
}

Change readSplitPanel(JsonObject& object) {
    SplitPanel change;
    change.panel = neededName(object, "panel");
    change.bottomAlongMm = neededMm(object, "bottom");
    change.topAlongMm = neededMm(object, "top");
    return change;
}

Change readJoinPanels(JsonObject& object) { return JoinPanels{neededName(object, "seam")}; }

Change readMakeSymmetric(JsonObject& object) {
    return MakeSymmetric{object
                             .choice<SymmetrySource>("from", {{"mean", SymmetrySource::mean},
                                                              {"left", SymmetrySource::left},
                                                              {"right", SymmetrySource::right}})
                             .value_or(SymmetrySource::mean)};
}

Change readChangeStyle(JsonObject& object) {
    ChangeStyle change;
    if (!isThere(object, "style")) return change;
    if (auto style = object.object("style")) change.style = readStyle(*style);
    return change;
}

Change readTakeMeasurements(JsonObject& object) {
    return TakeMeasurements{neededName(object, "measurement_set")};
}

using Reader = Change (*)(JsonObject&);

const std::map<std::string, Reader>& readers() {
    static const std::map<std::string, Reader> readers{
        {"shape_seam", readShapeSeam},       {"open_panel", readOpenPanel},
        {"change_length", readChangeLength}, {"reshape_edge", readReshapeEdge},
        {"move_level", readMoveLevel},       {"move_corner", readMoveCorner},
        {"move_handle", readMoveHandle},     {"split_panel", readSplitPanel},
        {"join_panels", readJoinPanels},     {"make_symmetric", readMakeSymmetric},
        {"change_style", readChangeStyle},   {"take_measurements", readTakeMeasurements}};
    return readers;
}

std::optional<Alteration> readAlteration(JsonObject& object, const NewId& newId) {
    if (!isThere(object, "kind")) return std::nullopt;
    const auto reader = object.choice("kind", readers());
    if (!reader) return std::nullopt;
    Alteration alteration;
    alteration.id = object.has("id") ? neededName(object, "id") : newId();
    alteration.side = readSide(object);
    alteration.change = (*reader)(object);
    alteration.why = object.text("why").value_or("");
    alteration.marks = object.texts("marks").value_or(std::vector<std::string>{});
    alteration.isOn = object.truth("on").value_or(true);
    object.refuseUnknown(ProblemCode::jsonUnknownKey);
    return alteration;
}

}  // namespace

std::vector<Alteration> readAlterations(JsonObject& top, std::string_view key, const NewId& newId) {
    std::vector<Alteration> alterations;
    if (!isThere(top, key)) return alterations;
    for (JsonObject& object : top.objects(key)) {
        if (auto alteration = readAlteration(object, newId)) {
            alterations.push_back(std::move(*alteration));
        }
    }
    return alterations;
}

}  // namespace coutil::text_formats
