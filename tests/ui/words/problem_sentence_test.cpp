// Every problem has a sentence for people: never the key, never a hole, in one line.
#include "ui/words/problem_sentence.h"

#include <limits>
#include <set>
#include <string>
#include <utility>

#include <gtest/gtest.h>

#include "core/measurements/body.h"
#include "core/store/text_formats.h"
#include "ui/words/sentence_filling.h"

namespace coutil {
namespace {

constexpr auto kCm = LengthUnit::centimetre;

QString plain(QString text) { return text.replace(QChar(QChar::Nbsp), QLatin1Char(' ')); }

QString sentenceOf(const Problem& problem, LengthUnit unit = kCm) {
    return plain(problemSentence(problem, unit));
}

Problem problemOf(ProblemCode code, std::string subject, std::string detail = {}) {
    Problem problem;
    problem.code = code;
    problem.subject = std::move(subject);
    problem.detail = std::move(detail);
    return problem;
}

// Every figure any sentence asks for.
Problem fullProblem(ProblemCode code) {
    Problem problem = problemOf(code, "one", "two");
    problem.panel = std::string("3");
    for (const char* name : {"value", "limit", "lowest", "highest", "other", "target", "spread",
                             "percent", "difference"}) {
        problem.figures.push_back({name, 12.5});
    }
    for (const char* name : {"line", "column", "file", "program"}) {
        problem.figures.push_back({name, 7, FigureUnit::count});
    }
    return problem;
}

TEST(ProblemSentence, everyCodeHasOneOfItsOwn) {
    std::set<QString> seen;
    for (const ProblemCode code : allProblemCodes()) {
        const std::string key(keyOf(code));
        const QString sentence = sentenceOf(fullProblem(code));
        EXPECT_GT(sentence.size(), 20) << key;
        EXPECT_FALSE(sentence.contains(QString::fromStdString(key))) << key;
        EXPECT_FALSE(sentence.contains('{') || sentence.contains('}')) << sentence.toStdString();
        EXPECT_FALSE(sentence.contains('[') || sentence.contains(']')) << sentence.toStdString();
        EXPECT_FALSE(sentence.contains('\n')) << key;
        EXPECT_TRUE(sentence.endsWith('.') || sentence.endsWith('?')) << sentence.toStdString();
        EXPECT_FALSE(sentence.contains("? ")) << sentence.toStdString();
        EXPECT_TRUE(seen.insert(sentence).second) << sentence.toStdString();
    }
}

TEST(ProblemSentence, saysLengthsInTheMakersUnit) {
    Problem problem = problemOf(ProblemCode::measurementImpossible, "bust_girth");
    problem.figures = {{"value", 96}, {"lowest", 508}, {"highest", 2200}};
    EXPECT_EQ(sentenceOf(problem, kCm),
              "Bust girth cannot be 9.6 cm: bodies lie between 50.8 cm and 220 cm; check the "
              "figure and its unit.");
    EXPECT_TRUE(sentenceOf(problem, LengthUnit::inch).contains("between 20 in and"));
}

TEST(ProblemSentence, neverLosesAFigureHoweverAbsurd) {
    Problem problem = problemOf(ProblemCode::measurementImpossible, "bust_girth");
    problem.figures = {
        {"value", std::numeric_limits<double>::infinity()}, {"lowest", 508}, {"highest", 2200}};
    EXPECT_TRUE(sentenceOf(problem).contains("cannot be inf cm"))
        << sentenceOf(problem).toStdString();
}

TEST(ProblemSentence, showsSmallDifferencesInMillimetres) {
    Problem problem = problemOf(ProblemCode::seamLengthsDiffer, "2-3");
    problem.figures = {{"value", 300.034}, {"other", 300}, {"difference", 0.034}};
    EXPECT_TRUE(sentenceOf(problem).contains("by 0.03 mm")) << sentenceOf(problem).toStdString();
}

TEST(ProblemSentence, leavesOutWhatIsNotKnown) {
    Problem problem = problemOf(ProblemCode::measurementUnknown, "values.shoe_size");
    EXPECT_EQ(sentenceOf(problem), "values.shoe_size: there is no measurement of this name");
    problem.detail = std::string("scye_depth");
    EXPECT_TRUE(sentenceOf(problem).endsWith("did you mean “scye_depth”?"));
}

TEST(ProblemSentence, readsNothingIntoTextsOfFiles) {
    Problem problem =
        problemOf(ProblemCode::lengthUnreadable, "values.bust_girth", "{value} [x]\nand %1");
    EXPECT_TRUE(sentenceOf(problem).contains("“{value} [x] and %1”"))
        << sentenceOf(problem).toStdString();
}

// What the rooms really report, filled in without a hole.
TEST(ProblemSentence, holdsTheFactsOfRealProblems) {
    MeasurementSet set;
    using enum Measurement;
    set.valuesMm = {{bustGirth, 900},        {underBustGirth, 1000}, {waistGirth, 30},
                    {waistToUnderBust, 170}, {waistToBust, 160},     {stature, 2100}};
    const auto body = completeBody(set);
    ASSERT_FALSE(body.hasValue());
    EXPECT_GE(body.problems.size(), 5U);
    for (const Problem& problem : body.problems) {
        const QString sentence = sentenceOf(problem);
        EXPECT_FALSE(sentence.contains("?")) << sentence.toStdString();
        EXPECT_FALSE(sentence.contains("_")) << sentence.toStdString();
    }
    const auto broken = readMeasurementsJson("{\"coutil\":\"measurements\",\"version\":1,}");
    ASSERT_EQ(broken.problems.size(), 1U);
    EXPECT_TRUE(sentenceOf(broken.problems[0]).contains("line 1, column 38"))
        << sentenceOf(broken.problems[0]).toStdString();
}

}  // namespace
}  // namespace coutil
