#include "core/store/folio_file/folio_header.h"

#include <cstddef>
#include <cstdint>

#include "core/store/folio_file.h"

namespace coutil {
namespace {

constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::size_t kPageCountAt = 28;
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;
constexpr std::size_t kPageSizeAt = 16;

std::uint32_t bigEndian(std::string_view bytes, std::size_t at, std::size_t count) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < count; ++i)
        number = (number << 8) | static_cast<unsigned char>(bytes[at + i]);
    return number;
}

std::uint64_t lengthByHeader(std::string_view bytes) {
    const std::uint32_t size = bigEndian(bytes, kPageSizeAt, 2);
    return std::uint64_t{size == 1 ? 65536U : size} * bigEndian(bytes, kPageCountAt, 4);
}

}  // namespace

bool hasFolioMark(std::string_view bytes) {
    return bytes.starts_with(kMagic) && bytes.size() >= kFolioHeaderBytes &&
           bigEndian(bytes, kApplicationIdAt, 4) == std::uint32_t{kFolioApplicationId};
}

std::optional<Problem> checkFolioHeader(std::string_view bytes, const std::filesystem::path& file) {
    Problem problem;
    problem.subject = file.string();
    problem.code = ProblemCode::fileForeign;
    if (!bytes.starts_with(kMagic)) return problem;
    problem.code = ProblemCode::fileDamaged;
    if (bytes.size() < kFolioHeaderBytes) return problem;
    problem.code = ProblemCode::fileForeign;
    if (!hasFolioMark(bytes)) return problem;
    problem.code = ProblemCode::fileDamaged;
    if (lengthByHeader(bytes) != bytes.size()) return problem;
    const std::uint32_t version = bigEndian(bytes, kUserVersionAt, 4);
    if (version <= std::uint32_t{kFolioSchemaVersion}) return std::nullopt;
    problem.code = ProblemCode::fileNewer;
    problem.figures = {{"file", static_cast<double>(version), FigureUnit::count},
                       {"program", kFolioSchemaVersion, FigureUnit::count}};
    return problem;
}

}  // namespace coutil
