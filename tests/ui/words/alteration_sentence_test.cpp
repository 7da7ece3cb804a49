// Every kind of alteration says in words what, where and how much.
#include "ui/words/alteration_sentence.h"

#include <set>
#include <variant>

#include <gtest/gtest.h>

namespace coutil {
namespace {

constexpr LengthUnit kMm = LengthUnit::millimetre;

Alteration altered(Change change, BodySide side = BodySide::both) {
    Alteration alteration;
    alteration.side = side;
    alteration.change = std::move(change);
    return alteration;
}

// With plain blanks, to be read here.
QString told(const Alteration& alteration, LengthUnit unit = kMm) {
    return alterationSentence(alteration, unit).replace(QChar(QChar::Nbsp), QLatin1Char(' '));
}

TEST(AlterationSentence, shapedSeams) {
    EXPECT_EQ(told(altered(ShapeSeam{"2-3", {{35, 4}}}, BodySide::left)),
              "seam 2-3: 4 mm in at +35 mm, left");
    EXPECT_EQ(told(altered(ShapeSeam{"2-3", {{-90, -12.5}, {0, 3}, {60, 0}}})),
              "seam 2-3: 12.5 mm out at \u221290 mm, 3 mm in at the waist, nothing at +60 mm");
    EXPECT_EQ(told(altered(ShapeSeam{"centre back", {{0, 6}}}, BodySide::right)),
              "centre back: 6 mm in at the waist, right");
    EXPECT_EQ(told(altered(ShapeSeam{"2-3", {}})), "seam 2-3: nothing");
}

TEST(AlterationSentence, lengthsStandInTheMakersUnit) {
    const Alteration shaped = altered(ShapeSeam{"2-3", {{35, 4}}});
    EXPECT_EQ(told(shaped, LengthUnit::centimetre), "seam 2-3: 0.4 cm in at +3.5 cm");
    const Alteration inches = altered(ShapeSeam{"2-3", {{38.1, 6.35}, {-25.4, -6.35}}});
    EXPECT_EQ(told(inches, LengthUnit::inch),
              "seam 2-3: 1/4 in taken in at +1 1/2 in, 1/4 in let out at \u22121 in");
}

TEST(AlterationSentence, openedAndClosedPanels) {
    OpenPanel open{.panel = "3", .mouth = {"top", 40}, .amountMm = 6};
    open.hinge = EdgePlace{"bottom", 30};
    EXPECT_EQ(told(altered(open)),
              "panel 3: opened by 6 mm at top edge, 40 mm from its front end, hinged at bottom "
              "edge, 30 mm from its front end");
    OpenPanel slit{.panel = "3 left", .mouth = {"bottom", 25}, .amountMm = -5};
    slit.slitLengthMm = 80;
    EXPECT_EQ(told(altered(slit, BodySide::left)),
              "panel 3 left: closed by 5 mm at bottom edge, 25 mm from its front end, slit 80 mm "
              "long, left");
    open.hinge = EdgePlace{"seam 3-4", -20};
    EXPECT_TRUE(told(altered(open)).endsWith("hinged at seam 3-4 at \u221220 mm"));
}

Alteration lengthened(const std::string& level, double heightMm, double amountMm) {
    ChangeLength change;
    change.at.level = level;
    change.at.heightMm = heightMm;
    change.amountMm = amountMm;
    return altered(change);
}

TEST(AlterationSentence, changedLengths) {
    EXPECT_EQ(told(lengthened("", 80, -7)), "shortened 7 mm 80 mm over the waist");
    EXPECT_EQ(told(lengthened("", -40, 7)), "lengthened 7 mm 40 mm under the waist");
    EXPECT_EQ(told(lengthened("", 0, 7)), "lengthened 7 mm at the waist");
    EXPECT_EQ(told(lengthened("Rippenbogen", 0, 7)), "lengthened 7 mm at Rippenbogen");
    Alteration tapering = lengthened("waist", 0, 10);
    std::get<ChangeLength>(tapering.change).taper = Taper{"centre back", "3-4"};
    EXPECT_EQ(told(tapering),
              "lengthened 10 mm at the waist, from centre back to nothing at seam 3-4");
}

TEST(AlterationSentence, reshapedEdges) {
    ReshapeEdge reshape;
    reshape.amounts = {{{"2-3"}, 10}, {{"", "4", 35}, -5}};
    EXPECT_EQ(told(altered(reshape)),
              "top edge: raised 10 mm at seam 2-3, lowered 5 mm at panel 4, 35 mm from its front "
              "end");
    reshape = {.line = EdgeLine::bottom, .amounts = {{{"centre front"}, -8}}};
    EXPECT_EQ(told(altered(reshape)), "bottom edge: lowered 8 mm at centre front");
}

TEST(AlterationSentence, movedLevelsCornersAndHandles) {
    EXPECT_EQ(told(altered(MoveLevel{"bust", 12, 20})),
              "bust: moved 12 mm up, bust points 20 mm further apart");
    EXPECT_EQ(told(altered(MoveLevel{"bust", 0, -6})), "bust: bust points 6 mm closer together");
    EXPECT_EQ(told(altered(MoveLevel{"hip", -9})), "hip: moved 9 mm down");
    EXPECT_EQ(told(altered(MoveLevel{"hip"})), "hip: not moved");
    EXPECT_EQ(told(altered(MoveCorner{"2", "seam 2-3", EdgeLine::top, {2, 3}})),
              "panel 2: upper end of seam 2-3 moved 3 mm up and 2 mm towards the back");
    EXPECT_EQ(told(altered(MoveCorner{"2", "seam 2-3", EdgeLine::bottom, {-2, -3}})),
              "panel 2: lower end of seam 2-3 moved 3 mm down and 2 mm towards the front");
    EXPECT_EQ(told(altered(MoveHandle{"2", "top", 0, 2, {0, -4}})),
              "panel 2: handle 2 of curve 1 of top edge moved 4 mm down");
}

TEST(AlterationSentence, panelsSplitAndJoinedAndSidesMadeEqual) {
    EXPECT_EQ(told(altered(SplitPanel{"2", 40, 35})),
              "panel 2: split by a new seam, 40 mm from the front end of the bottom edge, 35 mm at "
              "the top edge");
    EXPECT_EQ(told(altered(JoinPanels{"2-3"})), "seam 2-3 given up, its panels joined");
    EXPECT_EQ(told(altered(MakeSymmetric{SymmetrySource::mean})),
              "both sides made equal, halfway between them");
    EXPECT_EQ(told(altered(MakeSymmetric{SymmetrySource::left})),
              "both sides made as the left one");
    EXPECT_EQ(told(altered(MakeSymmetric{SymmetrySource::right})),
              "both sides made as the right one");
}

TEST(AlterationSentence, severalSayWhatEachStyleChangesAndWhenReadingsWereTaken) {
    Folio folio;
    MeasurementSet set;
    set.id = "second";
    set.takenOn = "2026-06-02";
    folio.measurementSets.push_back(set);
    const Style before;
    Style narrower = before;
    narrower.easeMm[LevelId::waist] = -70;
    narrower.lacingGapMm = 40;
    Style longer = narrower;
    longer.bottomEdge.frontMm = 120;
    Alteration off = altered(ShapeSeam{"1-2", {{0, 5}}});
    off.isOn = false;
    const std::vector<Alteration> all{altered(ChangeStyle{narrower}), off,
                                      altered(ChangeStyle{longer}),
                                      altered(TakeMeasurements{"second"})};
    const QStringList sentences = alterationSentences(all, {&folio, &before}, kMm);
    ASSERT_EQ(sentences.size(), 3) << "what is switched off changed nothing";
    EXPECT_EQ(sentences[0], "other style: Lacing gap, Ease: waist");
    EXPECT_EQ(sentences[1], "other style: Bottom edge");
    EXPECT_TRUE(sentences[2].startsWith("new measurements of ")) << sentences[2].toStdString();
    EXPECT_TRUE(sentences[2].contains("2026") || sentences[2].contains("26"));
    const QStringList alone = alterationSentences(all, {}, kMm);
    EXPECT_EQ(alone, QStringList({"other style", "other style: Bottom edge", "new measurements"}));
}

// Grows with the variant: a new kind without words of its own fails here.
template <std::size_t... kIndex>
std::set<QString> barest(std::index_sequence<kIndex...>) {
    return {told(altered(std::variant_alternative_t<kIndex, Change>{}))...};
}

TEST(AlterationSentence, everyKindHasWordsOfItsOwn) {
    const auto all = barest(std::make_index_sequence<std::variant_size_v<Change>>());
    EXPECT_EQ(all.size(), std::variant_size_v<Change>);
    for (const QString& text : all) EXPECT_GE(text.size(), 8) << text.toStdString();
}

}  // namespace
}  // namespace coutil
