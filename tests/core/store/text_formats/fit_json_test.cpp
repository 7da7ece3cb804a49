// Marks and alterations as JSON: every field comes back, and every fault is named with the path of
// its key.
#include <fstream>
#include <random>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/store/text_formats.h"

namespace coutil {
namespace {

// The example in DEVELOPERS.md that is of this kind.
std::string published(const std::string& kind) {
    std::ifstream in(std::string(COUTIL_SOURCE_DIR) + "/DEVELOPERS.md");
    std::stringstream text;
    text << in.rdbuf();
    const std::string all = text.str();
    const auto start = all.find("{\"coutil\": \"" + kind + "\"");
    if (start == std::string::npos) return {};
    return all.substr(start, all.find("```", start) - start);
}

Outcome<std::vector<Alteration>> alteration(const std::string& entry) {
    return readAlterationsJson(R"({"coutil":"alterations","version":1,"alterations":[)" + entry +
                               "]}");
}

Outcome<MarksText> mark(const std::string& entry) {
    return readMarksJson(R"({"coutil":"marks","version":1,"marks":[)" + entry + "]}");
}

// "code subject|..." of all problems.
std::string told(const std::vector<Problem>& problems) {
    std::string text;
    for (const Problem& problem : problems) {
        if (!text.empty()) text += "|";
        text += keyOf(problem.code);
        text += " ";
        text += problem.subject;
    }
    return text;
}

TEST(FitJson, publishedMarksHoldEveryKindAndComeBack) {
    const auto read = readMarksJson(published("marks"));
    ASSERT_TRUE(read) << told(read.problems);
    std::set<MarkKind> kinds;
    std::set<std::size_t> places;
    for (const Mark& one : read->marks) {
        kinds.insert(one.kind);
        places.insert(one.place.index());
        EXPECT_EQ(one.id.size(), 36U);
    }
    EXPECT_EQ(kinds.size(), 12U);
    EXPECT_EQ(places.size(), std::variant_size_v<MarkPlace>);
    EXPECT_EQ(read->date, "2026-03-14");
    EXPECT_EQ(read->revision, 1);
    EXPECT_EQ(read->how, FittingKind::posted);
    EXPECT_EQ(read->by, "client");
    EXPECT_EQ(read->marks[0].place, MarkPlace(SeamPlace{"2-3", 35}));
    EXPECT_EQ(read->marks[0].amountMm, 8);
    EXPECT_EQ(read->marks[2].side, BodySide::left);
    const auto again = readMarksJson(writeMarksJson(*read));
    ASSERT_TRUE(again) << told(again.problems);
    EXPECT_EQ(*again, *read);
}

TEST(FitJson, publishedAlterationsHoldEveryKindAndComeBack) {
    const auto read = readAlterationsJson(published("alterations"));
    ASSERT_TRUE(read) << told(read.problems);
    std::set<std::size_t> kinds;
    for (const Alteration& one : *read) kinds.insert(one.change.index());
    EXPECT_EQ(kinds.size(), std::variant_size_v<Change>);
    const auto& first = std::get<ShapeSeam>(read->front().change);
    EXPECT_EQ(first.amounts, (std::vector<AmountAt>{{35, 8}, {120, 0}}));
    EXPECT_EQ(first.up.overMm, 60);
    const auto& second = std::get<ShapeSeam>((*read)[1].change);
    EXPECT_EQ(second.up.overMm, 90);
    EXPECT_FALSE(second.down.overMm);
    const auto again = readAlterationsJson(writeAlterationsJson(*read));
    ASSERT_TRUE(again) << told(again.problems);
    EXPECT_EQ(*again, *read);
}

TEST(FitJson, theWrittenTextIsExactForAnyFigure) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> mm(-999, 999);
    for (int i = 0; i < 200; ++i) {
        std::vector<Alteration> list{
            {.id = "a",
             .side = BodySide::right,
             .change = ShapeSeam{"2-3",
                                 {{mm(random), mm(random)}},
                                 Fade{std::nullopt},
                                 Fade{33.3},
                                 0.123456789012345678},
             .why = "\"ä\n\"",
             .isOn = false},
            {.id = "b",
             .change = MoveCorner{"2", "top", EdgeLine::bottom, {mm(random), mm(random)}}},
            {.id = "c",
             .change = OpenPanel{"1",
                                 {"top", mm(random)},
                                 EdgePlace{"bottom", mm(random)},
                                 std::nullopt,
                                 mm(random)}}};
        const auto again = readAlterationsJson(writeAlterationsJson(list));
        ASSERT_TRUE(again) << told(again.problems);
        EXPECT_EQ(*again, list);
    }
}

TEST(FitJson, idsComeFromTheCaller) {
    int count = 0;
    const auto read = readAlterationsJson(
        R"({"coutil":"alterations","version":1,"alterations":[
            {"kind":"join_panels","seam":"1-2"},{"kind":"join_panels","seam":"2-3","id":"own"}]})",
        [&count] { return "new " + std::to_string(++count); });
    ASSERT_TRUE(read);
    EXPECT_EQ((*read)[0].id, "new 1");
    EXPECT_EQ((*read)[1].id, "own");
}

TEST(FitJson, faultsOfAlterationsAreNamed) {
    const std::vector<std::pair<std::string, std::string>> faults{
        {R"({"seam":"2-3"})", "json_key_missing alterations[0].kind"},
        {R"({"kind":"shape_sem","seam":"2-3"})", "json_wants_choice alterations[0].kind"},
        {R"({"kind":"shape_seam","amounts":[[0,1]]})", "json_key_missing alterations[0].seam"},
        {R"({"kind":"shape_seam","seam":"","amounts":[[0,1]]})",
         "json_bad_value alterations[0].seam"},
        {R"({"kind":"shape_seam","seam":"2-3"})", "json_key_missing alterations[0].amounts"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[35,8]})",
         "json_wants_pairs alterations[0].amounts"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[]})",
         "json_key_missing alterations[0].amounts[0]"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[[0,1e9]]})",
         "length_out_of_range alterations[0].amounts[0]"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[[0,1]],"fade":"far"})",
         "length_unreadable alterations[0].fade"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[[0,1]],"fade":-3})",
         "length_negative alterations[0].fade"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[[0,1]],"split":7})",
         "json_bad_value alterations[0].split"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[[0,1]],"spilt":0.4})",
         "json_unknown_key alterations[0].spilt"},
        {R"({"kind":"shape_seam","seam":"2-3","amounts":[[0,1]],"side":"port"})",
         "json_wants_choice alterations[0].side"},
        {R"({"kind":"open_panel","panel":"2","mouth":{"edge":"top","along":20},"amount":5})",
         "json_key_missing alterations[0].hinge"},
        {R"({"kind":"open_panel","panel":"2","mouth":{"edge":"top"},"slit_length":80,"amount":5})",
         "json_key_missing alterations[0].mouth.along"},
        {R"({"kind":"change_length","level":"waist","amount":1001})",
         "length_out_of_range alterations[0].amount"},
        {R"({"kind":"change_length","amount":10})", "json_key_missing alterations[0].height"},
        {R"({"kind":"reshape_edge","line":"side","amounts":[{"seam":"1-2","amount":3}]})",
         "json_wants_choice alterations[0].line"},
        {R"({"kind":"reshape_edge","line":"top","amounts":[{"amount":3}]})",
         "json_key_missing alterations[0].amounts[0].seam"},
        {R"({"kind":"move_level","level":"bust"})", "json_key_missing alterations[0].up"},
        {R"({"kind":"move_corner","panel":"2","edge":"top","end":"top","by":[1]})",
         "json_wants_number_list alterations[0].by"},
        {R"({"kind":"move_handle","panel":"2","edge":"top","piece":0.5,"handle":1,"by":[1,1]})",
         "json_wants_whole_number alterations[0].piece"},
        {R"({"kind":"move_handle","panel":"2","edge":"top","piece":0,"handle":3,"by":[1,1]})",
         "json_bad_value alterations[0].handle"},
        {R"({"kind":"join_panels","seam":"1-2","marks":"all"})",
         "json_wants_text_list alterations[0].marks"},
        {R"({"kind":"change_style","style":{"panles_per_half":4}})",
         "json_unknown_key alterations[0].style.panles_per_half"}};
    for (const auto& [entry, expected] : faults) {
        const auto read = alteration(entry);
        EXPECT_FALSE(read) << entry;
        EXPECT_EQ(told(read.problems), expected) << entry;
    }
}

TEST(FitJson, faultsOfMarksAreNamed) {
    const std::vector<std::pair<std::string, std::string>> faults{
        {R"({"kind":"pinned","amount":5})", "json_key_missing marks[0].seam"},
        {R"({"kind":"pinned","seam":"2-3","amount":5})", "json_key_missing marks[0].position"},
        {R"({"kind":"pinned","seam":"2-3","position":35})", "json_key_missing marks[0].amount"},
        {R"({"kind":"pinned","seam":"2-3","position":35,"amount":-5})",
         "length_negative marks[0].amount"},
        {R"({"kind":"pinned","seam":"2-3","position":3500,"amount":5})",
         "length_out_of_range marks[0].position"},
        {R"({"kind":"pinned","level":"waist","amount":5})", "json_key_missing marks[0].seam"},
        {R"({"kind":"raise","seam":"2-3","position":1,"amount":5})",
         "json_key_missing marks[0].line"},
        {R"({"kind":"longer","amount":5})", "json_key_missing marks[0].level"},
        {R"({"kind":"tight","seam":"2-3","position":35,"amount":5})",
         "json_wants_choice marks[0].kind"},
        {R"({"kind":"gapes","line":"top","seam":"2-3","photo":{"id":"p","x":1.5,"y":0}})",
         "json_bad_value marks[0].photo.x"},
        {R"({"kind":"gapes","nots":"x"})", "json_unknown_key marks[0].nots"}};
    for (const auto& [entry, expected] : faults) {
        const auto read = mark(entry);
        EXPECT_FALSE(read) << entry;
        EXPECT_EQ(told(read.problems), expected) << entry;
    }
    EXPECT_EQ(told(readMarksJson(R"({"coutil":"marks","version":1,
                                     "fitting":{"date":"14.3.2026","revision":0,"how":"by air"},
                                     "marks":[]})")
                       .problems),
              "date_unreadable fitting.date|json_bad_value fitting.revision|"
              "json_wants_choice fitting.how");
    EXPECT_EQ(told(readMarksJson(R"({"coutil":"marks","version":1})").problems),
              "json_key_missing marks");
    EXPECT_EQ(told(readMarksJson("{").problems), "json_broken ");
    EXPECT_EQ(told(readAlterationsJson(writeMarksJson({})).problems), "json_wrong_kind coutil");
}

}  // namespace
}  // namespace coutil
