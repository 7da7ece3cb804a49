#pragma once

#include <vector>

namespace coutil {

struct BuskChoices {
    std::vector<double> lengthsMm{200, 230, 250, 280, 300, 330, 350, 380, 400};  // in stock
    double freeAtEndMm = 8;   // between each end and the sewing line
    double widthMm = 13;      // of one half
    double endStudMm = 25;    // first and last stud from the ends of the busk
    double studPitchMm = 60;  // about; a pair nearer each other is left out
    bool operator==(const BuskChoices&) const = default;
};

}  // namespace coutil
