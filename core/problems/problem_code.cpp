#include "core/problems/problem_code.h"

namespace coutil {

std::string_view keyOf(ProblemCode code) {
    switch (code) {
#define COUTIL_CODE_KEY(name, key) \
    case ProblemCode::name:        \
        return key;
        COUTIL_PROBLEM_CODES(COUTIL_CODE_KEY)
#undef COUTIL_CODE_KEY
    }
    return {};
}

const std::vector<ProblemCode>& allProblemCodes() {
    static const std::vector<ProblemCode> codes{
#define COUTIL_CODE_VALUE(name, key) ProblemCode::name,
        COUTIL_PROBLEM_CODES(COUTIL_CODE_VALUE)
#undef COUTIL_CODE_VALUE
    };
    return codes;
}

}  // namespace coutil
