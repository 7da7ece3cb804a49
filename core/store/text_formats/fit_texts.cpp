#include <nlohmann/json.hpp>

#include "core/measurements/iso_date.h"
#include "core/store/text_formats.h"
#include "core/store/text_formats/fit_json.h"

namespace coutil {
namespace {

using nlohmann::ordered_json;
using text_formats::JsonObject;

std::string text(const ordered_json& json) {
    return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + "\n";
}

void readFitting(JsonObject& top, MarksText& read) {
    auto fitting = top.object("fitting");
    if (!fitting) return;
    read.date = fitting->text("date").value_or("");
    if (!read.date.empty() && !isIsoDate(read.date)) {
        fitting->report(ProblemCode::dateUnreadable, "date", read.date);
    }
    read.revision = fitting->wholeNumber("revision");
    if (read.revision && *read.revision < 1) {
        fitting->report(ProblemCode::jsonBadValue, "revision", fitting->asWritten("revision"));
    }
    read.how = fitting
                   ->choice<FittingKind>("how", {{"posted", FittingKind::posted},
                                                 {"in_person", FittingKind::inPerson}})
                   .value_or(FittingKind::inPerson);
    read.by = fitting->text("by").value_or("");
    read.note = fitting->text("note").value_or("");
    fitting->refuseUnknown(ProblemCode::jsonUnknownKey);
}

ordered_json fittingJson(const MarksText& marks) {
    ordered_json json = ordered_json::object();
    if (!marks.date.empty()) json["date"] = marks.date;
    if (marks.revision) json["revision"] = *marks.revision;
    json["how"] = keyOf(marks.how);
    if (!marks.by.empty()) json["by"] = marks.by;
    if (!marks.note.empty()) json["note"] = marks.note;
    return json;
}

}  // namespace

Outcome<std::vector<Alteration>> readAlterationsJson(std::string_view text,
                                                     const std::function<std::string()>& newId) {
    using Read = Outcome<std::vector<Alteration>>;
    const auto json = text_formats::parsedKind(text, "alterations");
    if (!json) return Read::failed(json.problems);
    std::vector<Problem> problems;
    JsonObject top(*json, {}, problems);
    text_formats::passKind(top);
    auto alterations = text_formats::readAlterations(top, "alterations", newId);
    top.refuseUnknown(ProblemCode::jsonUnknownKey);
    if (!problems.empty()) return Read::failed(std::move(problems));
    return alterations;
}

std::string writeAlterationsJson(const std::vector<Alteration>& alterations) {
    ordered_json json{{"coutil", "alterations"}, {"version", 1}};
    json["alterations"] = text_formats::alterationsJson(alterations);
    return text(json);
}

Outcome<MarksText> readMarksJson(std::string_view text, const std::function<std::string()>& newId) {
    const auto json = text_formats::parsedKind(text, "marks");
    if (!json) return Outcome<MarksText>::failed(json.problems);
    std::vector<Problem> problems;
    JsonObject top(*json, {}, problems);
    text_formats::passKind(top);
    MarksText read;
    readFitting(top, read);
    read.marks = text_formats::readMarks(top, "marks", newId);
    top.refuseUnknown(ProblemCode::jsonUnknownKey);
    if (!problems.empty()) return Outcome<MarksText>::failed(std::move(problems));
    return read;
}

std::string writeMarksJson(const MarksText& marks) {
    ordered_json json{{"coutil", "marks"}, {"version", 1}};
    json["fitting"] = fittingJson(marks);
    json["marks"] = text_formats::marksJson(marks.marks);
    return text(json);
}

}  // namespace coutil
