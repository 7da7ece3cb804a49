#include <nlohmann/json.hpp>

#include "core/store/text_formats/outline_json.h"

namespace coutil::text_formats {

namespace {

using nlohmann::ordered_json;

std::string nameOf(Severity severity) {
    switch (severity) {
        case Severity::note:
            return "note";
        case Severity::warning:
            return "warning";
        case Severity::error:
            return "error";
    }
    return {};
}

ordered_json problemJson(const Problem& problem, const SentenceOf& sentence) {
    ordered_json json;
    json["code"] = keyOf(problem.code);
    json["severity"] = nameOf(problem.severity);
    if (!problem.subject.empty()) json["subject"] = problem.subject;
    if (!problem.detail.empty()) json["detail"] = problem.detail;
    if (!problem.panel.empty()) json["panel"] = problem.panel;
    if (problem.at) json["at"] = pointJson(*problem.at);
    json["figures"] = ordered_json::object();
    for (const Figure& figure : problem.figures) {
        json["figures"][figure.name] = numberJson(figure.value);
    }
    if (sentence) json["text"] = sentence(problem);
    return json;
}

}  // namespace

ordered_json problemsJson(const std::vector<Problem>& problems, const SentenceOf& sentence) {
    ordered_json json = ordered_json::array();
    for (const Problem& problem : problems) json.push_back(problemJson(problem, sentence));
    return json;
}

}  // namespace coutil::text_formats
