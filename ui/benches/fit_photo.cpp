#include "ui/benches/fit_photo.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImageReader>
#include <QImageWriter>
#include <QLocale>
#include <QPainter>

#include "core/store/uuid.h"
#include "ui/document/new_folio.h"

namespace coutil {

namespace {

constexpr int kJpegQuality = 86;
// Four bytes a pixel of the largest picture taken, and room for turning it.
constexpr int kReadingLimitMb = 1024;
constexpr double kMegapixel = 1e6;

Problem unreadable(const QString& file) {
    return {.code = ProblemCode::photoUnreadable,
            .subject = QFileInfo(file).fileName().toStdString()};
}

QSize within(const QSize& size, int longestSidePx) {
    if (std::max(size.width(), size.height()) <= longestSidePx) return size;
    return size.scaled(longestSidePx, longestSidePx, Qt::KeepAspectRatio).expandedTo(QSize(1, 1));
}

// Fresh pixels on white: nothing else of the file comes along.
QImage pixelsOnly(const QImage& read) {
    QImage made(within(read.size(), kLongestPhotoSidePx), QImage::Format_RGB32);
    made.fill(Qt::white);
    QPainter painter(&made);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(made.rect(), read);
    return made;
}

}  // namespace

bool isPictureFile(const QString& file) {
    const QString ending = QFileInfo(file).suffix().toLower();
    return ending == QLatin1String("jpg") || ending == QLatin1String("jpeg") ||
           ending == QLatin1String("png");
}

Outcome<Photo> readPhoto(const QString& file) {
    QImageReader reader(file);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    if (format != "jpeg" && format != "png") return unreadable(file);
    const QSize size = reader.size();
    if (!size.isValid()) return unreadable(file);
    const double megapixels = double(size.width()) * size.height() / kMegapixel;
    if (megapixels > kLargestPhotoMegapixels) {
        return Problem{.code = ProblemCode::photoTooLarge,
                       .subject = QFileInfo(file).fileName().toStdString(),
                       .detail = QLocale().toString(megapixels, 'f', 0).toStdString() + " MP"};
    }
    QImageReader::setAllocationLimit(kReadingLimitMb);
    reader.setAutoTransform(true);  // upright
    reader.setScaledSize(within(size, kLongestPhotoSidePx));
    const QImage read = reader.read();
    if (read.isNull()) return unreadable(file);
    const QImage kept = pixelsOnly(read);
    QByteArray jpeg;
    QBuffer buffer(&jpeg);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(kJpegQuality);
    if (!writer.write(kept)) return unreadable(file);
    return Photo{.id = newUuid(),
                 .caption = {},
                 .addedOn = today(),
                 .widthPx = kept.width(),
                 .heightPx = kept.height(),
                 .jpeg = jpeg.toStdString()};
}

QImage pictureOf(const Photo& photo, int longestSidePx) {
    QByteArray jpeg = QByteArray::fromRawData(photo.jpeg.data(), qsizetype(photo.jpeg.size()));
    QBuffer buffer(&jpeg);
    QImageReader reader(&buffer, "jpeg");
    if (reader.size().isValid()) reader.setScaledSize(within(reader.size(), longestSidePx));
    return reader.read();
}

}  // namespace coutil
