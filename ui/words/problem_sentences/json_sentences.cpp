#include "ui/words/problem_sentences/sentence_patterns.h"

namespace coutil {

QString ProblemSentence::ofJson(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::jsonBroken:
            if (hasFigure(problem, "bytes")) {
                return tr("The file is empty; choose another one, or write it anew.");
            }
            return tr(
                "The text is no valid JSON[ from line {line}, column {column} on]; look "
                "there for a missing or extra comma, quote or bracket, or a number too "
                "large.");
        case ProblemCode::jsonTooLarge:
            return tr(
                "The text is larger or nested deeper than anything this program writes "
                "({path} {value}, at most {highest}); check that it is the right file.");
        case ProblemCode::jsonKeyTwice:
            return tr("{path} stands twice in the text; remove one of them.");
        case ProblemCode::jsonKeyMissing:
            return tr("{path} is missing; add it.");
        case ProblemCode::jsonWrongKind:
            return tr(
                "This is not a file of the kind “{text}”; choose another file, or add the "
                "entries \"coutil\": \"{text}\" and \"version\": 1.");
        case ProblemCode::jsonWrongVersion:
            return tr(
                "version[ is {text} and] must be 1; write the file in that format, or "
                "update the program.");
        case ProblemCode::jsonUnknownKey:
            return tr("{path}: there is no such key[; did you mean “{text}”?]");
        case ProblemCode::jsonBadValue:
            return tr("{path} cannot be “{text}”; correct the value.");
        default:
            return ofJsonTypes(problem.code);
    }
}

QString ProblemSentence::ofJsonTypes(ProblemCode code) {
    switch (code) {
        case ProblemCode::jsonWantsText:
            return tr("{path} is {text}, but must be a text in quotes.");
        case ProblemCode::jsonWantsTruth:
            return tr("{path} is {text}, but must be true or false, without quotes.");
        case ProblemCode::jsonWantsNumber:
            return tr("{path} is {text}, but must be a number without quotes.");
        case ProblemCode::jsonWantsWholeNumber:
            return tr("{path} is {text}, but must be a whole number.");
        case ProblemCode::jsonWantsNumberList:
            return tr(
                "{path} is {text}, but must be a list of numbers, with commas, in square "
                "brackets.");
        case ProblemCode::jsonWantsPairs:
            return tr(
                "{path} is {text}, but must be a list of pairs of numbers, each pair in square "
                "brackets of its own.");
        case ProblemCode::jsonWantsTextList:
            return tr(
                "{path} is {text}, but must be a list of texts in quotes, in square brackets.");
        case ProblemCode::jsonWantsLength:
            return tr(
                "{path} is {text}, but must be a number, or a length in quotes like "
                "\"30 1/4 in\".");
        case ProblemCode::jsonWantsObject:
            return tr("{path} is {text}, but must be names with values in braces.");
        case ProblemCode::jsonWantsObjectList:
            return tr("{path} is {text}, but must be a list of entries in braces.");
        case ProblemCode::jsonWantsChoice:
            return tr("{path} must be one of these, in quotes: {text}.");
        default:
            return {};
    }
}

}  // namespace coutil
