#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofFolios(ProblemCode code) {
    switch (code) {
        case ProblemCode::garmentTaken:
            return tr("The folio has a garment called “{path}” already; choose another name.");
        case ProblemCode::garmentUnknown:
            return tr("The folio has no garment called “{path}”[; it has {text}].");
        case ProblemCode::revisionUnknown:
            return tr("The garment has no revision “{path}”[; it has {text}].");
        case ProblemCode::dateUnreadable:
            return tr(
                "{path}: “{text}” is not a date; write it as year-month-day, like "
                "2026-03-02.");
        default:
            return {};
    }
}

}  // namespace coutil
