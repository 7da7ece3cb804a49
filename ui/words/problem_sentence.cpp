#include "ui/words/problem_sentence.h"

namespace coutil {

QString problemSentence(const Problem& problem, LengthUnit) {
    const auto key = keyOf(problem.code);
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

}  // namespace coutil
