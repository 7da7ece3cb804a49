#include "ui/benches/fit_photo.h"

#include <QBuffer>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace coutil {
namespace {

// An Exif segment (CIPA DC-008, TIFF 6.0 inside) with a description and an orientation: 6 means the
// picture is to be turned a quarter clockwise to stand upright.
QByteArray exifSegment(const QByteArray& description, char orientation) {
    QByteArray tiff("MM\0\x2A\0\0\0\x08", 8);
    tiff += QByteArray("\0\x02", 2);
    tiff += QByteArray("\x01\x0E\0\x02\0\0\0", 7) + char(description.size() + 1);
    tiff += QByteArray("\0\0\0\x26", 4);  // 8 + 2 + 2 * 12 + 4
    tiff += QByteArray("\x01\x12\0\x03\0\0\0\x01\0", 9) + orientation + QByteArray("\0\0", 2);
    tiff += QByteArray("\0\0\0\0", 4);
    tiff += description + '\0';
    const QByteArray body = QByteArray("Exif\0\0", 6) + tiff;
    const auto length = body.size() + 2;
    return QByteArray("\xFF\xE1", 2) + char(length >> 8) + char(length & 0xFF) + body;
}

QString savedJpeg(const QTemporaryDir& folder, const QImage& image, const QByteArray& segment) {
    QByteArray jpeg;
    QBuffer buffer(&jpeg);
    image.save(&buffer, "jpeg");
    jpeg.insert(2, segment);
    const QString name = folder.filePath("front.jpg");
    QFile file(name);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(jpeg);
    return name;
}

// Left half red, right half blue.
QImage twoColours(int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::blue);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width / 2; ++x) image.setPixelColor(x, y, Qt::red);
    return image;
}

TEST(FitPhotoTest, standsUprightAndTellsNothingOfThePlace) {
    const QTemporaryDir folder;
    const QString file = savedJpeg(folder, twoColours(320, 200), exifSegment("12.34 N", 6));
    const auto photo = readPhoto(file);
    ASSERT_TRUE(photo);
    EXPECT_EQ(photo->widthPx, 200);
    EXPECT_EQ(photo->heightPx, 320);
    EXPECT_EQ(photo->jpeg.find("12.34 N"), std::string::npos);
    EXPECT_EQ(photo->jpeg.find("Exif"), std::string::npos);
    const QImage shown = pictureOf(*photo);
    ASSERT_EQ(shown.size(), QSize(200, 320));
    EXPECT_GT(shown.pixelColor(100, 20).red(), 200);  // what was on the left is now above
    EXPECT_GT(shown.pixelColor(100, 300).blue(), 200);
}

TEST(FitPhotoTest, largePicturesAreScaledToTheLongSide) {
    const QTemporaryDir folder;
    const QString name = folder.filePath("large.png");
    ASSERT_TRUE(twoColours(4800, 1000).save(name));
    const auto photo = readPhoto(name);
    ASSERT_TRUE(photo);
    EXPECT_EQ(photo->widthPx, kLongestPhotoSidePx);
    EXPECT_EQ(photo->heightPx, 500);
    EXPECT_EQ(photo->jpeg.substr(0, 2), "\xFF\xD8");
}

TEST(FitPhotoTest, overAHundredMegapixelsAreRefused) {
    const QTemporaryDir folder;
    QImage image(12000, 9000, QImage::Format_Mono);
    image.fill(0);
    const QString name = folder.filePath("huge.png");
    ASSERT_TRUE(image.save(name));
    const auto photo = readPhoto(name);
    ASSERT_FALSE(photo);
    EXPECT_EQ(photo.problems.front().code, ProblemCode::photoTooLarge);
    EXPECT_EQ(photo.problems.front().subject, "huge.png");
}

TEST(FitPhotoTest, otherFilesAreRefused) {
    const QTemporaryDir folder;
    const QString name = folder.filePath("scan.jpg");
    ASSERT_TRUE(twoColours(20, 20).save(name, "bmp"));
    for (const QString& file : {name, folder.filePath("missing.jpg")}) {
        const auto photo = readPhoto(file);
        ASSERT_FALSE(photo);
        EXPECT_EQ(photo.problems.front().code, ProblemCode::photoUnreadable);
    }
}

}  // namespace
}  // namespace coutil
