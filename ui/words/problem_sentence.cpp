#include "ui/words/problem_sentence.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/words/sentence_filling.h"

namespace coutil {

namespace {

// The patterns of all sentences, one function a stage; filledSentence() explains the braces and
// brackets. Each says what, where, and what to do, in one line.
class ProblemSentence {
    Q_DECLARE_TR_FUNCTIONS(ProblemSentence)

  public:
    static QString pattern(const Problem& problem);

  private:
    static QString ofGeometry(ProblemCode code);
    static QString ofMeasurements(const Problem& problem);
    static QString ofBlock(const Problem& problem);
    static QString ofSheets(ProblemCode code);
    static QString ofFiles(const Problem& problem);
    static QString ofJson(const Problem& problem);
    static QString ofJsonTypes(ProblemCode code);
    static QString ofCalls(const Problem& problem);
};

bool hasFigure(const Problem& problem, const char* name) {
    return std::ranges::find(problem.figures, name, &Figure::name) != problem.figures.end();
}

// "between 100 % and 100 %" is said more simply.
bool leavesOneValue(const Problem& problem) {
    const auto lowest = std::ranges::find(problem.figures, "lowest", &Figure::name);
    const auto highest = std::ranges::find(problem.figures, "highest", &Figure::name);
    return lowest != problem.figures.end() && highest != problem.figures.end() &&
           lowest->value == highest->value;
}

QString ProblemSentence::ofGeometry(ProblemCode code) {
    switch (code) {
        case ProblemCode::lengthUnreadable:
            return tr(
                "[{subject}: ]“{text}” is not a length; write it like 96, 37 3/4 in or "
                "32.5 cm.");
        case ProblemCode::lengthNegative:
            return tr(
                "[{subject}: ]{text} is less than nothing; write a length without a minus "
                "sign.");
        case ProblemCode::lengthOutOfRange:
            return tr(
                "[{subject}: ]“{text}” is far longer than anything that can be sewn; check "
                "the figure and its unit.");
        case ProblemCode::offsetLostPart:
            return tr(
                "[Panel {panel}: ]the allowance swallows a corner of the sewing line[ "
                "({value:fine})]; give this edge a narrower allowance or make the panel "
                "wider there.");
        case ProblemCode::offsetTooNear:
            return tr(
                "[Panel {panel}: ]the cutting line comes nearer to the sewing line than "
                "asked[ ({value:fine} instead of {limit:fine})]; change the allowance of "
                "this edge or smooth the line there.");
        case ProblemCode::offsetTooFar:
            return tr(
                "[Panel {panel}: ]the cutting line lies farther from the sewing line than "
                "asked[ ({value:fine} instead of {limit:fine})]; change the allowance of "
                "this edge or smooth the line there.");
        case ProblemCode::outlineOpen:
            return tr(
                "[Panel {panel}: ]the outline has a gap; draw the lines there until they "
                "meet.");
        case ProblemCode::outlineCrossesItself:
            return tr(
                "[Panel {panel}: ]the outline crosses itself; take less in here, or give "
                "the panel more width.");
        default:
            return {};
    }
}

QString ProblemSentence::ofMeasurements(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::measurementMissing:
            return tr(
                "{subject} is missing[ (or {detail} in its place)]; measure it and type it "
                "in, nothing can be drafted without it.");
        case ProblemCode::measurementImpossible:
            return tr(
                "{subject} cannot be {value}: bodies lie between {lowest} and {highest}; "
                "check the figure and its unit.");
        case ProblemCode::measurementImprobable:
            if (hasFigure(problem, "expected")) {
                return tr(
                    "{subject} of {value} is unusual:[ going by {detail},] {expected} give or "
                    "take {spread} is expected; measure again, or keep it if it is right.");
            }
            return tr(
                "{subject} of {value} is rare: it usually lies between {lowest} and "
                "{highest}; measure again, or keep it if it is right.");
        case ProblemCode::measurementsContradict:
            if (hasFigure(problem, "lowest")) {
                return tr(
                    "{subject} ({value}) does not agree with {detail} ({other}): it should "
                    "be more than {lowest}; measure both again.");
            }
            return tr(
                "{subject} ({value}) does not agree with {detail} ({other}): it should be "
                "less than {highest}; measure both again.");
        case ProblemCode::measurementUnknown:
            return tr("{path}: there is no measurement of this name[; did you mean “{text}”?]");
        default:
            return {};
    }
}

QString ProblemSentence::ofBlock(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::styleValueOutOfRange:
            if (leavesOneValue(problem)) {
                return tr("{subject} is {value}, but must be {lowest}; change it in the style.");
            }
            return tr(
                "{subject}[ is {value}][, but must lie between {lowest} and {highest}]; change it "
                "in the style.");
        case ProblemCode::styleUnknownKey:
            return tr(
                "{subject}: “{text}” cannot be used here; name seams and edges as this block has "
                "them, and every level of your own once.");
        case ProblemCode::panelTooNarrow:
            return tr(
                "[Panel {panel} ]is too narrow at {subject}[: {value} where {limit} is the "
                "least]; use fewer panels, less reduction, or a smaller lacing gap.");
        case ProblemCode::levelOrderWrong:
            return tr(
                "The levels {subject} and {detail} lie too close together or in the wrong "
                "order[ ({value} apart, at least {limit} needed)]; measure their heights "
                "again.");
        case ProblemCode::edgeHeightImpossible:
            return tr(
                "{subject}[ at {detail}] cannot end {value} from the waist[: between "
                "{lowest} and {highest} is possible]; change this height in the style.");
        case ProblemCode::reductionLarge:
            return tr(
                "The waist is reduced by {value}[ ({percent})], for practised wearers only[ "
                "above {limit}]: reduce less, or lace with care and stop at pain, numbness "
                "or short breath.");
        case ProblemCode::girthTargetMissed:
            return tr(
                "The girth at {subject}[ is {value:fine} on the pattern instead of "
                "{target:fine}]; look at the seams there and correct them.");
        case ProblemCode::seamLengthsDiffer:
            return tr(
                "Seam {subject}: the two edges differ in length[ by {difference:fine}][ "
                "({value:fine} and {other:fine})]; correct one of them so that they can be sewn "
                "together.");
        case ProblemCode::lineBrokenAcrossSeam:
            return tr(
                "[The {detail} ]is not one smooth line across seam {subject}[ but bends by "
                "{value}]; smooth it there.");
        default:
            return {};
    }
}

QString ProblemSentence::ofSheets(ProblemCode code) {
    switch (code) {
        case ProblemCode::paperUnknown:
            return tr(
                "There is no paper called “{detail}”; choose A4, A3, A0, Letter, Legal, "
                "Tabloid or a roll, or write a size in mm like 200x300.");
        case ProblemCode::paperTooSmall:
            return tr(
                "The paper[ {detail}] leaves too little room inside its margins[: {value}, "
                "and at least {limit} is needed]; choose a larger paper or smaller margins.");
        case ProblemCode::sheetOptionOutOfRange:
            return tr(
                "{subject} is {value}[, but must lie between {lowest} and {highest}]; change "
                "it.");
        case ProblemCode::tooManySheets:
            return tr(
                "This would take {value} sheets[ of {detail}], more than {limit}; choose a "
                "larger paper.");
        default:
            return {};
    }
}

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

QString ProblemSentence::ofCalls(const Problem& problem) {
    switch (problem.code) {
        case ProblemCode::callUnknown:
            return tr(
                "There is no call “{path}”[ (perhaps “{text}”)]; coutil --help lists "
                "them.");
        case ProblemCode::callIncomplete:
            return tr("The call {path} needs {text}; coutil --help shows how.");
        case ProblemCode::optionUnknown:
            return tr(
                "There is no option “{path}”[ for {text}]; coutil --help lists the "
                "options.");
        case ProblemCode::optionBadValue:
            if (hasFigure(problem, "garments")) {
                return tr(
                    "Option {path} needs a new folio, but this one exists already (garments in it: "
                    "{garments}); leave the option out or choose a new file.");
            }
            return tr(
                "Option {path} cannot be “{text}”[: it must lie between {lowest} and "
                "{highest}]; coutil --help shows what it takes.");
        case ProblemCode::optionWithoutValue:
            return tr("Option {path} needs a value after it[: {text}].");
        case ProblemCode::optionTwice:
            return tr("Option {path} is there twice; leave one of them out.");
        case ProblemCode::optionsExclude:
            return tr("Options {path} and {text} exclude each other; leave one of them out.");
        case ProblemCode::operandUnexpected:
            return tr(
                "“{path}” is one word too many[ for {text}]; leave it out, or put quotes "
                "around a name with blanks.");
        case ProblemCode::displayMissing:
            return tr(
                "There is no display to open a window on; coutil --help lists the calls that "
                "need none.");
        default:
            return {};
    }
}

QString ProblemSentence::pattern(const Problem& problem) {
    for (const QString& found :
         {ofGeometry(problem.code), ofMeasurements(problem), ofBlock(problem),
          ofSheets(problem.code), ofFiles(problem), ofJson(problem), ofCalls(problem)}) {
        if (!found.isEmpty()) return found;
    }
    return {};
}

}  // namespace

QString problemSentence(const Problem& problem, LengthUnit unit) {
    return filledSentence(ProblemSentence::pattern(problem), problem, unit);
}

}  // namespace coutil
