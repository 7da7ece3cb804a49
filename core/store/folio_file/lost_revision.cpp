#include "core/store/folio_file/lost_revision.h"

#include <system_error>

#include "core/store/folio_file/folio_image.h"
#include "core/store/whole_file.h"

namespace coutil {

std::optional<Problem> revisionLostBy(const Folio& folio, const std::filesystem::path& file) {
    // A pipe or device would be waited for, or never end.
    std::error_code unknown;
    if (!std::filesystem::is_regular_file(file, unknown)) return std::nullopt;
    const Outcome<std::string> bytes = readWholeFile(file, kLargestFolioBytes);
    if (!bytes) return std::nullopt;
    for (const HeldRevision& held : revisionsHeldIn(*bytes)) {
        if (findRevision(folio, held.digest) != nullptr) continue;
        Problem lost;
        lost.code = ProblemCode::fileUnwritable;
        lost.subject = file.string();
        lost.detail = held.garment;
        lost.figures = {{"revision", static_cast<double>(held.number), FigureUnit::count}};
        return lost;
    }
    return std::nullopt;
}

}  // namespace coutil
