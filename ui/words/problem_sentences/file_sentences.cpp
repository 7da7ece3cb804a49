#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofFiles(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::fileMissing:
            return tr("{path}: there is no such file; check the name and the folder.");
        case ProblemCode::fileUnreadable:
            return tr(
                "{path}: the file cannot be read[ ({text})]; check that you may open "
                "it.");
        case ProblemCode::fileUnwritable:
            if (hasFigure(problem, "folio_bytes")) {
                return tr(
                    "{path}: this is a folio of Coutil and is never written over; choose another "
                    "name.");
            }
            if (hasFigure(problem, "revision")) {
                return tr(
                    "{path}: not saved, because revision {revision} of {text}, which was confirmed "
                    "in this file elsewhere, would be lost; save under another name.");
            }
            return tr(
                "{path}: nothing can be written here[ ({text})]; choose another folder "
                "or name.");
        case ProblemCode::fileForeign:
            return tr(
                "{path}: this is not a folio of Coutil; open a file that ends in "
                ".coutil.");
        case ProblemCode::fileDamaged:
            return tr(
                "{path}: the folio is damaged[ ({text})]; nothing was changed, use your "
                "last copy of it.");
        case ProblemCode::fileNewer:
            return tr(
                "{path}: a newer version of Coutil wrote this folio[ (format {file}, this "
                "program reads up to {program})]; update the program to open it.");
        case ProblemCode::diskFull:
            return tr(
                "{path}: there is no room left on the disk; nothing was changed, make "
                "room and save again.");
        default:
            return {};
    }
}

}  // namespace coutil
