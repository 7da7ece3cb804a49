#include "ui/printing/pdf_file.h"

#include <exception>
#include <filesystem>
#include <string_view>

#include "store/whole_file.h"
#include "ui/printing/pdf_pages.h"

namespace coutil {
namespace {

Problem unwritable(const QString& path, std::string reason) {
    Problem problem;
    problem.code = ProblemCode::fileUnwritable;
    problem.subject = path.toStdString();
    problem.detail = std::move(reason);
    return problem;
}

}  // namespace

Outcome<PdfEnd> writeSheetsPdf(const std::vector<SheetDrawing>& drawings, const PdfInfo& info,
                               const QString& path, const PdfProgress& progress) {
    const QByteArray painted = paintedPdf(drawings, progress);
    if (painted.isEmpty()) return PdfEnd::stopped;
    QByteArray bytes;
    try {
        bytes = finishedPdf(painted, drawings, info);
    } catch (const std::exception& error) {  // the PDF library throws; no stage of ours does
        return unwritable(path, error.what());
    }
    const std::string_view whole(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    if (auto problem = writeWholeFile(std::filesystem::path(path.toStdString()), whole)) {
        return *problem;
    }
    return PdfEnd::written;
}

}  // namespace coutil
