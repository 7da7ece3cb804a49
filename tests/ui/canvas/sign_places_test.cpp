#include "ui/canvas/sign_places.h"

#include <gtest/gtest.h>

#include "tests/ui/canvas/invented_scene.h"

namespace coutil {
namespace {

class SignPlacesTest : public testing::Test {
  protected:
    // Between the first two panels of the invented scene: 24 mm at the foot, hollowed wider.
    void addSign(double yMm, const char* words) {
        SceneSign& sign = scene.signs.emplace_back();
        sign.shape = SceneSign::Shape::towards;
        sign.atMm = {92, yMm};
        sign.words = QLatin1String(words);
    }
    std::vector<SignPlace> places() {
        const FlatScene flat = flattenedScene(scene);
        const TableView view(3, QPointF(100, 500));
        const std::vector<SignPlace> found =
            signPlaces({scene, flat, view, tableColours(false), QRectF(0, 0, 1400, 1100), {}});
        for (const SignPlace& each : found)
            isOnLine = isOnLine || isCrossed(scene, flat, view, each.words);
        return found;
    }
    TableScene scene = inventedScene(3);
    bool isOnLine = false;
};

TEST_F(SignPlacesTest, wordsStandOnNoLineWhereThereIsRoom) {
    addSign(0, "8 mm");  // on the waist line
    addSign(60, "6 mm");
    const auto found = places();
    EXPECT_FALSE(isOnLine);
    for (const SignPlace& each : found) EXPECT_FALSE(each.words.isNull());
}

TEST_F(SignPlacesTest, wordsOfNeighboursKeepApart) {
    for (const double yMm : {60.0, 63.0, 66.0, 69.0}) addSign(yMm, "6 mm");
    const auto found = places();
    for (std::size_t i = 0; i < found.size(); ++i)
        for (std::size_t j = i + 1; j < found.size(); ++j)
            EXPECT_FALSE(found[i].words.intersects(found[j].words)) << i << " and " << j;
}

TEST_F(SignPlacesTest, noWordsTakeNoRoom) {
    addSign(60, "");
    EXPECT_TRUE(places().front().words.isNull());
}

}  // namespace
}  // namespace coutil
