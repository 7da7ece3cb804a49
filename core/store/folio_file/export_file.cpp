#include "core/store/export_file.h"

#include <array>
#include <fstream>
#include <system_error>

#include "core/store/folio_file/folio_header.h"
#include "core/store/whole_file.h"

namespace coutil {
namespace {

// A damaged or newer folio counts too; a device or pipe is not read, it might never answer.
bool isFolio(const std::filesystem::path& file) {
    std::error_code unknown;
    if (!std::filesystem::is_regular_file(file, unknown)) return false;
    std::ifstream source(file, std::ios::binary);
    std::array<char, kFolioHeaderBytes> head{};
    source.read(head.data(), head.size());
    return hasFolioMark({head.data(), static_cast<std::size_t>(source.gcount())});
}

}  // namespace

std::optional<Problem> writeExport(const std::filesystem::path& file, std::string_view bytes) {
    if (!isFolio(file)) return writeWholeFile(file, bytes);
    std::error_code unknown;
    Problem problem;
    problem.code = ProblemCode::fileUnwritable;
    problem.subject = file.string();
    problem.figures = {{"folio_bytes",
                        static_cast<double>(std::filesystem::file_size(file, unknown)),
                        FigureUnit::count}};
    return problem;
}

}  // namespace coutil
