#include <nlohmann/json.hpp>

#include "core/store/comparison_formats.h"
#include "core/store/text_formats/fit_json.h"
#include "core/store/text_formats/outline_json.h"

namespace coutil {
namespace {

using nlohmann::ordered_json;
using text_formats::numberJson;

ordered_json mmJson(const std::optional<double>& mm) {
    return mm ? numberJson(*mm) : ordered_json(nullptr);
}

template <class Items, class Show>
ordered_json listJson(const Items& items, Show show) {
    ordered_json json = ordered_json::array();
    for (const auto& item : items) json.push_back(show(item));
    return json;
}

ordered_json headJson(const RevisionHead& head) {
    return {{"id", head.id}, {"state", head.state}, {"date", head.date}, {"digest", head.digest}};
}

ordered_json edgeJson(const EdgeComparison& edge) {
    ordered_json json;
    json["name"] = edge.edge;
    json["role"] = keyOf(edge.role);
    json["largest"] = numberJson(edge.largestMm);
    json["at_a"] = text_formats::pointJson(edge.onA);
    json["at_b"] = text_formats::pointJson(edge.onB);
    json["along_a"] = mmJson(edge.alongAMm);
    json["along_b"] = mmJson(edge.alongBMm);
    return json;
}

ordered_json panelJson(const PanelComparison& panel) {
    ordered_json json;
    json["name"] = panel.name;
    json["side"] = text_formats::nameOf(panel.side);
    json["in_a"] = panel.inA.has_value();
    json["in_b"] = panel.inB.has_value();
    json["shift_of_b"] = text_formats::pointJson(panel.shiftOfB);
    json["area_a"] = mmJson(panel.areaAMm2);
    json["area_b"] = mmJson(panel.areaBMm2);
    json["edges"] = listJson(panel.edges, edgeJson);
    return json;
}

ordered_json seamLevelJson(const SeamAtLevel& at) {
    return {{"level", at.level},
            {"amount", mmJson(at.amountMm)},
            {"in_front", mmJson(at.inFrontMm)},
            {"behind", mmJson(at.behindMm)}};
}

ordered_json lengthsJson(const std::optional<SeamLengths>& lengths) {
    if (!lengths) return nullptr;
    return {{"above_waist", numberJson(lengths->aboveWaistMm)},
            {"below_waist", numberJson(lengths->belowWaistMm)}};
}

ordered_json seamJson(const SeamComparison& seam) {
    ordered_json json;
    json["name"] = seam.name;
    json["side"] = text_formats::nameOf(seam.side);
    json["in_a"] = seam.isInA;
    json["in_b"] = seam.isInB;
    json["levels"] = listJson(seam.levels, seamLevelJson);
    json["lengths_a"] = lengthsJson(seam.lengthsA);
    json["lengths_b"] = lengthsJson(seam.lengthsB);
    json["largest"] = nullptr;
    if (seam.largest) {
        json["largest"] = {{"position", numberJson(seam.largest->positionMm)},
                           {"amount", numberJson(seam.largest->amountMm)}};
    }
    return json;
}

ordered_json levelJson(const LevelComparison& level) {
    return {{"name", level.level},
            {"height_a", mmJson(level.heightAMm)},
            {"height_b", mmJson(level.heightBMm)},
            {"body", mmJson(level.bodyMm)},
            {"target", mmJson(level.targetMm)},
            {"a", mmJson(level.aMm)},
            {"b", mmJson(level.bMm)},
            {"difference", mmJson(level.differenceMm)}};
}

ordered_json heightJson(const EdgeHeightComparison& height) {
    return {{"line", keyOf(height.line)},
            {"seam", height.seam},
            {"side", text_formats::nameOf(height.side)},
            {"a", mmJson(height.aMm)},
            {"b", mmJson(height.bMm)},
            {"difference", mmJson(height.differenceMm)}};
}

ordered_json girthJson(const GirthAt& at) {
    return {{"height", numberJson(at.heightMm)}, {"a", mmJson(at.aMm)}, {"b", mmJson(at.bMm)}};
}

ordered_json bodyJson(const BodyGirth& body) {
    return {{"level", body.level},
            {"height", numberJson(body.heightMm)},
            {"girth", numberJson(body.girthMm)}};
}

ordered_json alterationJson(const DatedAlteration& dated) {
    ordered_json json = text_formats::alterationsJson({dated.alteration}).front();
    json["garment"] = dated.garment;
    json["revision"] = dated.revision == 0 ? ordered_json("pencil") : ordered_json(dated.revision);
    json["date"] =
        dated.confirmedOn.empty() ? ordered_json(nullptr) : ordered_json(dated.confirmedOn);
    return json;
}

}  // namespace

std::string writeComparisonJson(const ComparisonReport& report) {
    ordered_json json;
    json["coutil"] = "comparison";
    json["version"] = 1;
    json["a"] = headJson(report.a);
    json["b"] = headJson(report.b);
    json["panels"] = listJson(report.comparison.panels, panelJson);
    json["seams"] = listJson(report.comparison.seams, seamJson);
    json["levels"] = listJson(report.comparison.levels, levelJson);
    json["edge_heights"] = listJson(report.comparison.edgeHeights, heightJson);
    json["girth_chart"] = {{"girths", listJson(report.chart.girths, girthJson)},
                           {"body", listJson(report.chart.body, bodyJson)}};
    json["alterations"] = {{"only_in_a", listJson(report.alterations.onlyInA, alterationJson)},
                           {"only_in_b", listJson(report.alterations.onlyInB, alterationJson)},
                           {"styles_differ", report.alterations.stylesDiffer},
                           {"measurements_differ", report.alterations.measurementsDiffer}};
    return text_formats::dumped(json) + "\n";
}

}  // namespace coutil
