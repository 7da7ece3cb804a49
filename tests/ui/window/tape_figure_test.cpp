// Every measurement has its own tape line on the drawn body, where the body is.
#include "ui/benches/tape_figure.h"

#include <QImage>
#include <QPainter>
#include <map>

#include <gtest/gtest.h>

#include "ui/benches/tape_line.h"

namespace coutil {
namespace {

QImage drawn(std::optional<Measurement> id) {
    QImage image(200, 280, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintTapeFigure(painter, image.rect(), id, {Qt::black, Qt::darkGray, Qt::red});
    return image;
}

int redPixels(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour = image.pixelColor(x, y);
            if (colour.red() > 180 && colour.green() < 120) ++count;
        }
    }
    return count;
}

TEST(TapeFigure, everyMeasurementHasALineOfItsOwn) {
    std::map<QByteArray, std::string_view> seen;
    for (const MeasurementInfo& info : measurementCatalogue()) {
        const QImage image = drawn(info.id);
        EXPECT_GT(redPixels(image), 25) << info.key << ": the tape can be seen";
        const QByteArray bits(reinterpret_cast<const char*>(image.constBits()),
                              image.sizeInBytes());
        const auto [other, isNew] = seen.emplace(bits, info.key);
        EXPECT_TRUE(isNew) << info.key << " looks like " << other->second;
    }
    EXPECT_EQ(redPixels(drawn(std::nullopt)), 0);
}

TEST(TapeFigure, theTapeLiesInsideThePictureAndMeetsItsLevels) {
    for (const MeasurementInfo& info : measurementCatalogue()) {
        const TapeLine line = tapeLineOf(info.id);
        ASSERT_FALSE(line.seen.isEmpty()) << info.key;
        const QRectF tape = line.seen.boundingRect().adjusted(-0.1, -0.1, 0.1, 0.1);
        EXPECT_TRUE(figureFrame(line.view).contains(tape)) << info.key;
        if (info.kind == MeasurementKind::girth) {
            EXPECT_FALSE(line.hasEnds) << info.key;
            EXPECT_FALSE(line.hidden.isEmpty()) << info.key << ": a girth goes around the back";
        } else {
            EXPECT_TRUE(line.hasEnds) << info.key;
        }
    }
}

// Heights of the drawing keep the order of a body's levels.
TEST(TapeFigure, theLevelsOfTheDrawingAreInOrder) {
    EXPECT_GT(figure::kArmpit, figure::kBust);
    EXPECT_GT(figure::kBust, figure::kUnderBust);
    EXPECT_GT(figure::kUnderBust, figure::kWaist);
    EXPECT_GT(figure::kWaist, figure::kHighHip);
    EXPECT_GT(figure::kHighHip, figure::kHip);
    EXPECT_LT(halfWidthAt(figure::kWaist), halfWidthAt(figure::kUnderBust));
    EXPECT_LT(halfWidthAt(figure::kWaist), halfWidthAt(figure::kHip));
    EXPECT_DOUBLE_EQ(halfWidthAt(figure::kBust), 15.3);
}

}  // namespace
}  // namespace coutil
