#include "core/making_up/choice_range.h"

#include <utility>

namespace coutil {

void requireWithin(std::string key, double value, double lowest, double highest,
                   std::vector<Problem>& problems, FigureUnit unit) {
    if (value >= lowest && value <= highest) return;  // false for what is not a number
    problems.push_back(
        {.code = ProblemCode::makingUpOutOfRange,
         .subject = std::move(key),
         .figures = {
             {"value", value, unit}, {"lowest", lowest, unit}, {"highest", highest, unit}}});
}

}  // namespace coutil
