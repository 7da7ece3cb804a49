#include "ui/printing/pdf_file.h"

#include <filesystem>
#include <string_view>

#include "core/store/export_file.h"
#include "ui/printing/pdf_pages.h"

namespace coutil {

Outcome<PdfEnd> writeSheetsPdf(const std::vector<SheetDrawing>& drawings, const PdfInfo& info,
                               const QString& path, const PdfProgress& progress) {
    const std::vector<PdfPage> pages = pdfPages(drawings);
    const QByteArray painted = paintedPdf(pages, progress);
    if (painted.isEmpty()) return PdfEnd::stopped;
    const QByteArray bytes = finishedPdf(painted, pages, info);
    if (bytes.isEmpty()) {
        Problem problem;
        problem.code = ProblemCode::fileUnwritable;
        problem.subject = path.toStdString();
        return problem;
    }
    const std::string_view whole(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    if (auto problem = writeExport(std::filesystem::path(path.toStdString()), whole)) {
        return *problem;
    }
    return PdfEnd::written;
}

}  // namespace coutil
