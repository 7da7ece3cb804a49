#include <nlohmann/json.hpp>

#include "core/store/text_formats.h"
#include "core/store/text_formats/outline_json.h"

namespace coutil {

namespace {

using nlohmann::ordered_json;
using text_formats::numberJson;
using text_formats::pointJson;

ordered_json titleJson(const TracingTitle& title) {
    ordered_json json;
    json["garment"] = title.garment;
    if (!title.client.empty()) json["client"] = title.client;
    json["revision"] = title.revision;
    json["date"] = title.date;
    json["pencil"] = title.isPencil;
    return json;
}

ordered_json sewingJson(const Tracing& tracing) {
    ordered_json json = ordered_json::array();
    for (std::size_t i = 0; i < tracing.sewing.size(); ++i) {
        ordered_json edge = text_formats::edgeJson(tracing.sewing[i]);
        if (i < tracing.allowancesMm.size())
            edge["allowance"] = numberJson(tracing.allowancesMm[i]);
        json.push_back(std::move(edge));
    }
    return json;
}

ordered_json notchJson(const Notch& notch) {
    ordered_json json;
    json["kind"] = notch.kind == NotchKind::waist ? "waist" : "balance";
    json["edge"] = notch.edge;
    json["position"] = numberJson(notch.positionMm);
    json["point"] = pointJson(notch.at);
    json["direction"] = pointJson(notch.outward);
    json["length"] = numberJson(notch.lengthMm);
    return json;
}

ordered_json labelJson(const Tracing& tracing, const TracingTitle& title) {
    ordered_json json;
    json["at"] = pointJson(tracing.labelAt);
    json["width"] = numberJson(tracing.labelWidthMm);
    json["height"] = numberJson(tracing.labelHeightMm);
    json["lines"] = ordered_json::array({tracing.panel});
    for (const std::string& line : {title.garment, title.client, title.revision, title.date}) {
        if (!line.empty()) json["lines"].push_back(line);
    }
    return json;
}

ordered_json tracingJson(const Tracing& tracing, const TracingTitle& title) {
    ordered_json json;
    json["panel"] = tracing.panel;
    json["side"] = text_formats::nameOf(tracing.side);
    json["cut"] = tracing.cutCount;
    json["mirrored_pair"] = tracing.isMirroredPair;
    json["on_fold"] = tracing.isOnFold;
    json["sewing"] = sewingJson(tracing);
    json["cutting"] = text_formats::pathJson(tracing.cutting);
    json["notches"] = ordered_json::array();
    for (const Notch& notch : tracing.notches) json["notches"].push_back(notchJson(notch));
    json["levels"] = text_formats::levelLinesJson(tracing.levels);
    json["grain"] = ordered_json::array({pointJson(tracing.grain[0]), pointJson(tracing.grain[1])});
    json["label"] = labelJson(tracing, title);
    return json;
}

}  // namespace

std::string writeTracingsJson(const std::vector<Tracing>& tracings, const TracingTitle& title,
                              const std::vector<Problem>& problems, const SentenceOf& sentence) {
    ordered_json json;
    json["coutil"] = "tracings";
    json["version"] = 1;
    json["title"] = titleJson(title);
    json["tracings"] = ordered_json::array();
    for (const Tracing& tracing : tracings) {
        json["tracings"].push_back(tracingJson(tracing, title));
    }
    json["problems"] = text_formats::problemsJson(problems, sentence);
    return text_formats::dumped(json) + "\n";
}

}  // namespace coutil
