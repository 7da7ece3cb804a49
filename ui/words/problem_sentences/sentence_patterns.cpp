#include "ui/words/problem_sentences/sentence_patterns.h"

#include <algorithm>

namespace coutil {

bool hasFigure(const Problem& problem, const char* name) {
    return std::ranges::find(problem.figures, name, &Figure::name) != problem.figures.end();
}

QString ProblemSentence::pattern(const Problem& problem) {
    for (const QString& found :
         {ofUnits(problem.code), ofGeometry(problem.code), ofMeasurements(problem),
          ofBlock(problem), ofAlterations(problem.code), ofChecks(problem.code),
          ofRevisions(problem), ofMakingUp(problem.code), ofSheets(problem), ofDrawings(problem),
          ofFiles(problem), ofFolios(problem.code), ofJson(problem), ofCalls(problem)}) {
        if (!found.isEmpty()) return found;
    }
    return {};
}

}  // namespace coutil
