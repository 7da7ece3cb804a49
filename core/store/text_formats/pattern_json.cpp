#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/store/text_formats.h"
#include "core/store/text_formats/outline_json.h"

namespace coutil {

namespace {

using nlohmann::ordered_json;
using text_formats::numberJson;

// Revisions are numbered: those ids are shown as numbers, "pencil" as a text, none as null.
ordered_json idJson(const std::string& id) {
    if (id.empty()) return nullptr;
    const bool isNumber =
        id.size() < 10 && std::ranges::all_of(id, [](char c) { return c >= '0' && c <= '9'; });
    if (isNumber) return std::stoi(id);
    return id;
}

ordered_json textOrNull(const std::string& text) {
    return text.empty() ? ordered_json(nullptr) : ordered_json(text);
}

ordered_json revisionJson(const RevisionHead& revision) {
    ordered_json json;
    json["id"] = idJson(revision.id);
    json["state"] = revision.state;
    json["date"] = textOrNull(revision.date);
    json["parent"] = idJson(revision.parent);
    json["digest"] = textOrNull(revision.digest);
    return json;
}

ordered_json panelJson(const Panel& panel) {
    ordered_json json;
    json["name"] = panel.name;
    json["side"] = text_formats::nameOf(panel.side);
    json["cut"] = panel.side == PanelSide::both && !isCutOnFold(panel) ? 2 : 1;
    json["on_fold"] = isCutOnFold(panel);
    json["edges"] = ordered_json::array();
    for (const Edge& edge : panel.edges) json["edges"].push_back(text_formats::edgeJson(edge));
    json["levels"] = text_formats::levelLinesJson(panel.levels);
    json["grain"] = ordered_json::array(
        {text_formats::pointJson(panel.grain[0]), text_formats::pointJson(panel.grain[1])});
    return json;
}

ordered_json seamJson(const Pattern& pattern, const Seam& seam) {
    const Edge& front = edgeAt(pattern, seam.front);
    const Edge& back = edgeAt(pattern, seam.back);
    const SeamLengths a = seamLengthsOf(front);
    const SeamLengths b = seamLengthsOf(back);
    ordered_json json;
    json["name"] = seam.name;
    json["a"] = {{"panel", pattern.panels[seam.front.panel].name}, {"edge", front.name}};
    json["b"] = {{"panel", pattern.panels[seam.back.panel].name}, {"edge", back.name}};
    json["ease"] = numberJson(seam.easeMm);
    json["above_waist"] = {numberJson(a.aboveWaistMm), numberJson(b.aboveWaistMm)};
    json["below_waist"] = {numberJson(a.belowWaistMm), numberJson(b.belowWaistMm)};
    return json;
}

ordered_json girthJson(const std::optional<double>& mm) {
    return mm ? numberJson(*mm) : ordered_json(nullptr);
}

ordered_json levelJson(const Level& level) {
    ordered_json json;
    json["name"] = level.name;
    json["height"] = numberJson(level.heightMm);
    json["body"] = girthJson(level.bodyMm);
    json["target"] = girthJson(level.targetMm);
    json["pattern"] = girthJson(level.patternMm);
    json["lacing_gap"] = numberJson(level.lacingGapMm);
    return json;
}

template <class Items, class Show>
ordered_json listJson(const Items& items, Show show) {
    ordered_json json = ordered_json::array();
    for (const auto& item : items) json.push_back(show(item));
    return json;
}

}  // namespace

std::string writePatternJson(const Pattern& pattern, const RevisionHead& revision,
                             const std::vector<Problem>& problems, const SentenceOf& sentence) {
    ordered_json json;
    json["coutil"] = "pattern";
    json["version"] = 1;
    json["revision"] = revisionJson(revision);
    json["panels"] = listJson(pattern.panels, panelJson);
    json["seams"] =
        listJson(pattern.seams, [&](const Seam& seam) { return seamJson(pattern, seam); });
    json["lacing_gap"] = numberJson(pattern.lacingGapMm);
    json["levels"] = listJson(pattern.levels, levelJson);
    json["estimates"] = listJson(pattern.estimates, text_formats::estimateJson);
    json["problems"] = text_formats::problemsJson(problems, sentence);
    return text_formats::dumped(json) + "\n";
}

}  // namespace coutil
