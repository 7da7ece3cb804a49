#include "core/store/folio_file.h"

#include <system_error>

#include "core/store/folio_file/folio_image.h"
#include "core/store/folio_file/lost_revision.h"
#include "core/store/whole_file.h"

namespace coutil {

Outcome<Folio> readFolio(const std::filesystem::path& file) {
    // A pipe or device would be waited for, or never end.
    std::error_code unknown;
    if (std::filesystem::is_other(file, unknown)) {
        Problem problem;
        problem.code = ProblemCode::fileUnreadable;
        problem.subject = file.string();
        return problem;
    }
    Outcome<std::string> bytes = readWholeFile(file, kLargestFolioBytes);
    if (!bytes) return Outcome<Folio>::failed(std::move(bytes.problems));
    return folioFromImage(*bytes, file);
}

std::optional<Problem> writeFolio(const Folio& folio, const std::filesystem::path& file) {
    if (auto lost = revisionLostBy(folio, file)) return lost;
    const Outcome<std::string> image = folioImage(folio, file);
    if (!image) return image.problems.front();
    // The writer compares bytes; that these bytes mean the folio is shown here, before anything
    // is replaced.
    const Outcome<Folio> meant = folioFromImage(*image, file);
    if (!meant || *meant != folio) {
        Problem problem;
        problem.code = ProblemCode::fileUnwritable;
        problem.subject = file.string();
        return problem;
    }
    return writeWholeFile(file, *image, NewFileRights::ownerOnly);
}

}  // namespace coutil
