#pragma once

#include <QImage>
#include <QString>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

inline constexpr int kLongestPhotoSidePx = 2400;
inline constexpr double kLargestPhotoMegapixels = 100;

// A JPEG or PNG file as the folio keeps it: turned upright, at most kLongestPhotoSidePx on its long
// side, a JPEG without metadata (no place, no camera, no time, no comments). Problems
// photoUnreadable, photoTooLarge (subject: the file; detail: its size in megapixels).
[[nodiscard]] Outcome<Photo> readPhoto(const QString& file);

// The picture, at most so many pixels on its long side; null where the bytes are no picture.
[[nodiscard]] QImage pictureOf(const Photo& photo, int longestSidePx = kLongestPhotoSidePx);

// Whether a file's name ends as pictures' do.
[[nodiscard]] bool isPictureFile(const QString& file);

}  // namespace coutil
