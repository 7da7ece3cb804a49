#include "tests/bodies/ansur_bodies.h"

#include <algorithm>
#include <cstddef>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>

namespace coutil::bodies {

namespace {

using Row = std::map<std::string, std::string>;

std::vector<std::string> cellsOf(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream stream(line);
    for (std::string cell; std::getline(stream, cell, ',');) cells.push_back(cell);
    return cells;
}

std::vector<Row> rowsOf(const std::string& file) {
    std::ifstream in(std::string(COUTIL_TEST_DATA "/bodies/") + file);
    std::string line;
    if (!std::getline(in, line)) throw std::runtime_error("cannot read " + file);
    const std::vector<std::string> names = cellsOf(line);
    std::vector<Row> rows;
    while (std::getline(in, line)) {
        const std::vector<std::string> cells = cellsOf(line);
        Row row;
        for (std::size_t i = 0; i < cells.size(); ++i) row[names.at(i)] = cells[i];
        rows.push_back(std::move(row));
    }
    return rows;
}

struct Spread {
    double meanMm = 0;
    double sdMm = 0;
};

std::map<std::string, Spread> statistics1988() {
    std::map<std::string, Spread> statistics;
    for (const Row& row : rowsOf("ansur1988_women_stats.csv")) {
        statistics[row.at("measure")] = {std::stod(row.at("mean_mm")), std::stod(row.at("sd_mm"))};
    }
    return statistics;
}

double mm(const Row& row, const std::string& column) { return std::stod(row.at(column)); }

// The place in one distribution that is as many standard deviations from the mean as in another.
double carriedOver(double valueMm, const Spread& from, const Spread& to) {
    return to.meanMm + (valueMm - from.meanMm) * to.sdMm / from.sdMm;
}

// Height of the natural waist: the mean of two places that ANSUR 1988 gives for it, above the navel
// (74.4 mm, in proportion to stature) and above the tenth rib (12.1 mm); at least 50 mm under the
// bust point, where no maker would tie the waist tape.
double naturalWaistHeightMm(const Row& row, const std::map<std::string, Spread>& s) {
    const double overNavelMm =
        s.at("waist_height_natural_indentation").meanMm - s.at("waist_height_omphalion").meanMm;
    const double overRibMm =
        s.at("waist_height_natural_indentation").meanMm - s.at("tenth_rib_height").meanMm;
    const double byNavelMm = mm(row, "waist_height_omphalion_mm") +
                             overNavelMm * mm(row, "stature_mm") / s.at("stature").meanMm;
    const double byRibMm = mm(row, "tenth_rib_height_mm") + overRibMm;
    return std::min((byNavelMm + byRibMm) / 2, mm(row, "chest_height_mm") - 50);
}

// Under-bust girth: carried over from the bust by the two distributions of 1988, and different from
// woman to woman as her chest is broader or narrower than her bust lets expect (regression of chest
// breadth on bust over the same 993: 106.1 + 0.1725 B, standard error 11.7). The spread of 22 mm is
// that of a correlation of 0.9 about the line, common practice. The bust exceeds it by 40 to 300.
double underBustGirthMm(const Row& row, const std::map<std::string, Spread>& s) {
    const double bustMm = mm(row, "chest_bust_girth_mm");
    const double broader = (mm(row, "chest_breadth_mm") - 106.1 - 0.1725 * bustMm) / 11.7;
    const double girthMm = carriedOver(bustMm, s.at("chest_bust_circumference"),
                                       s.at("chest_circumference_below_breast_underbust")) +
                           22 * broader;
    return std::clamp(girthMm, bustMm - 300, bustMm - 40);
}

// The crease lies under the bust point by 0.45 of what bust exceeds under-bust, between a third and
// two thirds of the way to the waist: common practice, no source.
double waistToUnderBustMm(double waistToBustMm, double bustMm, double underBustMm) {
    const double dropMm = 0.45 * (bustMm - underBustMm);
    return waistToBustMm - std::clamp(dropMm, waistToBustMm / 3, waistToBustMm * 2 / 3);
}

MeasurementSet completed(const Row& row, const std::map<std::string, Spread>& s) {
    using enum Measurement;
    const double waistHeightMm = naturalWaistHeightMm(row, s);
    const double navelGirthMm = mm(row, "waist_girth_omphalion_mm");
    MeasurementSet set;
    set.id = "ansur2-" + row.at("subject_id");
    set.takenOn = "2011-06-01";
    set.takenBy = "survey";
    auto& values = set.valuesMm;
    values[bustGirth] = mm(row, "chest_bust_girth_mm");
    values[underBustGirth] = underBustGirthMm(row, s);
    values[waistGirth] = carriedOver(navelGirthMm, s.at("waist_circumference_omphalion"),
                                     s.at("waist_circumference_natural_indentation"));
    values[topHipGirth] = navelGirthMm;
    values[hipGirth] = mm(row, "hip_buttock_girth_mm");
    values[neckBaseGirth] = mm(row, "neck_base_girth_mm");
    values[shoulderLength] = mm(row, "shoulder_length_mm");
    values[acrossBackWidth] = mm(row, "interscye_back_width_mm");
    values[upperArmGirth] = mm(row, "upper_arm_girth_flexed_mm");
    values[stature] = mm(row, "stature_mm");
    values[waistToBust] = mm(row, "chest_height_mm") - waistHeightMm;
    values[waistToUnderBust] =
        waistToUnderBustMm(values[waistToBust], values[bustGirth], values[underBustGirth]);
    values[waistToArmpit] = mm(row, "axilla_height_mm") - waistHeightMm;
    values[waistToHighHip] = waistHeightMm - mm(row, "waist_height_omphalion_mm");
    values[waistToHip] = waistHeightMm - mm(row, "buttock_height_mm");
    return set;
}

}  // namespace

std::vector<MeasurementSet> ansurBodies() {
    const auto statistics = statistics1988();
    std::vector<MeasurementSet> bodies;
    for (const Row& row : rowsOf("ansur2_women_a.csv"))
        bodies.push_back(completed(row, statistics));
    return bodies;
}

std::vector<MeasurementSet> ansurBodiesNeededOnly() {
    using enum Measurement;
    std::vector<MeasurementSet> bodies = ansurBodies();
    for (MeasurementSet& set : bodies) {
        std::map<Measurement, double> needed;
        for (const Measurement id : {bustGirth, underBustGirth, waistGirth, hipGirth,
                                     waistToUnderBust, waistToBust, waistToHip}) {
            needed[id] = set.valuesMm.at(id);
        }
        set.valuesMm = std::move(needed);
    }
    return bodies;
}

}  // namespace coutil::bodies
