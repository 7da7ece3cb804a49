#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/problems/problem.h"

namespace coutil {

// The patterns of all sentences, one function and one file a stage; filledSentence() explains the
// braces and brackets. Each says what, where, and what to do, in one line. The function of a stage
// returns an empty text for the codes of the others.
class ProblemSentence {
    Q_DECLARE_TR_FUNCTIONS(ProblemSentence)

  public:
    [[nodiscard]] static QString pattern(const Problem& problem);

  private:
    static QString ofUnits(ProblemCode code);
    static QString ofGeometry(ProblemCode code);
    static QString ofMeasurements(const Problem& problem);
    static QString ofBlock(const Problem& problem);
    static QString ofAlterations(ProblemCode code);
    static QString ofChecks(ProblemCode code);
    static QString ofChangedRules(const Problem& problem);
    static QString ofRevisions(const Problem& problem);
    static QString ofMakingUp(ProblemCode code);
    static QString ofLayersAndTracings(ProblemCode code);
    static QString ofSheetOption(const std::string& option);
    static QString ofSheets(const Problem& problem);
    static QString ofDrawings(const Problem& problem);
    static QString ofFiles(const Problem& problem);
    static QString ofFolios(ProblemCode code);
    static QString ofJson(const Problem& problem);
    static QString ofJsonTypes(ProblemCode code);
    static QString ofCalls(const Problem& problem);
};

// Some codes are said differently by the figures that come with them.
[[nodiscard]] bool hasFigure(const Problem& problem, const char* name);

}  // namespace coutil
