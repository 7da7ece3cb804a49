#include "core/store/folio_file/photo_rows.h"

#include <algorithm>
#include <utility>

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "core/revision/sha256.h"
#include "core/store/folio_file.h"

namespace coutil {
namespace {

std::string_view blobOf(const SQLite::Column& column) {
    const auto* bytes = static_cast<const char*>(column.getBlob());
    return {bytes, static_cast<std::size_t>(column.getBytes())};
}

bool hasBytes(SQLite::Database& database, const Photo& photo) {
    SQLite::Statement row(database, "SELECT jpeg FROM photo_bytes WHERE photo = ?");
    row.bind(1, photo.id);
    return row.executeStep() && blobOf(row.getColumn(0)) == photo.jpeg;
}

void putBytes(SQLite::Database& database, const Photo& photo) {
    if (hasBytes(database, photo)) return;
    SQLite::Statement put(database, "INSERT OR REPLACE INTO photo_bytes VALUES (?, ?, ?)");
    put.bind(1, photo.id);
    put.bind(2, sha256Hex(photo.jpeg));
    put.bind(3, photo.jpeg.data(), static_cast<int>(photo.jpeg.size()));
    put.exec();
}

// SQLite keeps whole numbers of 64 bits; ours are ints.
std::optional<int> wholeOf(const SQLite::Column& column) {
    const std::int64_t number = column.getInt64();
    if (!std::in_range<int>(number)) return std::nullopt;
    return static_cast<int>(number);
}

}  // namespace

std::optional<Problem> photoTooLargeIn(const Folio& folio) {
    const auto found = std::ranges::find_if(folio.photos, [](const Shared<Photo>& photo) {
        return photo->jpeg.size() > kLargestPhotoBytes;
    });
    if (found == folio.photos.end()) return std::nullopt;
    Problem problem;
    problem.code = ProblemCode::photoTooLarge;
    problem.subject = (*found)->caption.empty() ? (*found)->id : (*found)->caption;
    problem.figures = {{"bytes", static_cast<double>((*found)->jpeg.size()), FigureUnit::count},
                       {"limit", static_cast<double>(kLargestPhotoBytes), FigureUnit::count}};
    return problem;
}

void putPhotoRows(SQLite::Database& database, const Folio& folio) {
    SQLite::Statement put(database, "INSERT INTO photo VALUES (?, ?, ?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const Shared<Photo>& photo : folio.photos) {
        put.bind(1, photo->id);
        put.bind(2, place++);
        put.bind(3, photo->caption);
        put.bind(4, photo->addedOn);
        put.bind(5, photo->widthPx);
        put.bind(6, photo->heightPx);
        put.exec();
        put.reset();
        putBytes(database, *photo);
    }
    database.exec("DELETE FROM photo_bytes WHERE photo NOT IN (SELECT id FROM photo)");
}

bool takePhotos(SQLite::Database& database, Folio& folio) {
    SQLite::Statement rows(database,
                           "SELECT id, caption, added_on, width_px, height_px, digest, jpeg "
                           "FROM photo LEFT JOIN photo_bytes ON photo = id ORDER BY place");
    while (rows.executeStep()) {
        if (rows.isColumnNull(6)) return false;
        const auto widthPx = wholeOf(rows.getColumn(3));
        const auto heightPx = wholeOf(rows.getColumn(4));
        Photo photo{.id = rows.getColumn(0).getString(),
                    .caption = rows.getColumn(1).getString(),
                    .addedOn = rows.getColumn(2).getString(),
                    .widthPx = widthPx.value_or(0),
                    .heightPx = heightPx.value_or(0),
                    .jpeg = std::string(blobOf(rows.getColumn(6)))};
        if (!widthPx || !heightPx || sha256Hex(photo.jpeg) != rows.getColumn(5).getString())
            return false;
        folio.photos.emplace_back(std::move(photo));
    }
    return true;
}

}  // namespace coutil
