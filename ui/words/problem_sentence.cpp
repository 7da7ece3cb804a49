#include "ui/words/problem_sentence.h"

#include "ui/words/problem_sentences/sentence_patterns.h"
#include "ui/words/sentence_filling.h"

namespace coutil {

QString problemSentence(const Problem& problem, LengthUnit unit) {
    return filledSentence(ProblemSentence::pattern(problem), problem, unit);
}

}  // namespace coutil
