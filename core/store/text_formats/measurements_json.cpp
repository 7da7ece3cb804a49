#include <array>
#include <charconv>
#include <cstdio>
#include <cstdlib>

#include <nlohmann/json.hpp>

#include "core/measurements/iso_date.h"
#include "core/store/text_formats.h"
#include "core/store/text_formats/json_object.h"

namespace coutil {

namespace {

using nlohmann::ordered_json;
using text_formats::JsonObject;

void readValues(JsonObject& values, MeasurementSet& set) {
    for (const MeasurementInfo& info : measurementCatalogue()) {
        const auto mm = values.lengthMm(info.key, set.unit);
        if (!mm) continue;
        set.valuesMm[info.id] = *mm;
        const nlohmann::json* written = values.member(info.key);
        if (written->is_string()) set.asWritten[info.id] = written->get<std::string>();
    }
    values.refuseUnknown(ProblemCode::measurementUnknown);
}

void readDate(JsonObject& top, MeasurementSet& set) {
    set.takenOn = top.text("taken_on").value_or("");
    if (set.takenOn.empty() || isIsoDate(set.takenOn)) return;
    top.report(ProblemCode::dateUnreadable, "taken_on", set.takenOn);
}

// The shortest number in `unit` that is read back as exactly this length; nothing when rounding in
// the conversion leaves none.
std::optional<double> exactNumberIn(LengthUnit unit, double mm) {
    const double perUnit = millimetresIn(unit);
    for (int digits = 1; digits <= 17; ++digits) {
        std::array<char, 64> text{};
        const auto end = std::to_chars(text.data(), text.data() + text.size(), mm / perUnit,
                                       std::chars_format::general, digits);
        double number = 0;
        std::from_chars(text.data(), end.ptr, number);
        if (number * perUnit == mm) return number;
    }
    return std::nullopt;
}

ordered_json valueJson(const MeasurementSet& set, Measurement id, double mm) {
    const auto written = set.asWritten.find(id);
    if (written != set.asWritten.end()) {
        const auto read = readLengthMm(written->second, set.unit);
        if (read && *read == mm) return written->second;
    }
    if (const auto number = exactNumberIn(set.unit, mm)) return *number;
    return ordered_json(mm).dump() + " mm";
}

}  // namespace

Outcome<MeasurementSet> readMeasurementsJson(std::string_view text) {
    const auto json = text_formats::parsedKind(text, "measurements");
    if (!json) return Outcome<MeasurementSet>::failed(json.problems);
    std::vector<Problem> problems;
    JsonObject top(*json, {}, problems);
    text_formats::passKind(top);
    MeasurementSet set;
    set.unit = top.choice<LengthUnit>("unit", {{"mm", LengthUnit::millimetre},
                                               {"cm", LengthUnit::centimetre},
                                               {"in", LengthUnit::inch}})
                   .value_or(LengthUnit::centimetre);
    set.id = top.text("id").value_or("");
    readDate(top, set);
    set.takenBy = top.text("taken_by").value_or("");
    set.note = top.text("note").value_or("");
    if (auto values = top.object("values")) readValues(*values, set);
    top.refuseUnknown(ProblemCode::jsonUnknownKey);
    if (!problems.empty()) return Outcome<MeasurementSet>::failed(std::move(problems));
    return set;
}

std::string writeMeasurementsJson(const MeasurementSet& set) {
    ordered_json json;
    json["coutil"] = "measurements";
    json["version"] = 1;
    if (!set.id.empty()) json["id"] = set.id;
    json["unit"] = keyOf(set.unit);
    if (!set.takenOn.empty()) json["taken_on"] = set.takenOn;
    if (!set.takenBy.empty()) json["taken_by"] = set.takenBy;
    if (!set.note.empty()) json["note"] = set.note;
    json["values"] = ordered_json::object();
    for (const auto& [id, mm] : set.valuesMm) {
        json["values"][std::string(keyOf(id))] = valueJson(set, id, mm);
    }
    return json.dump(2, ' ', false, nlohmann::detail::error_handler_t::replace) + "\n";
}

}  // namespace coutil
