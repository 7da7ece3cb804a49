#include "ui/printing/pdf_file.h"

#include <QFileInfo>
#include <QSaveFile>
#include <QStorageInfo>
#include <cerrno>
#include <cstring>
#include <exception>

#include "ui/printing/pdf_pages.h"

namespace coutil {
namespace {

Problem unwritable(const QString& path, const QString& reason) {
    Problem problem;
    problem.code = ProblemCode::fileUnwritable;
    problem.subject = path.toStdString();
    problem.detail = reason.toStdString();
    return problem;
}

Problem diskFull(const QString& path) {
    Problem problem;
    problem.code = ProblemCode::diskFull;
    problem.subject = path.toStdString();
    return problem;
}

// Writing failed: because there is no room, or for what the system says.
Problem whyNot(const QString& path, const QSaveFile& file, int systemError) {
    const bool isFull = systemError == ENOSPC || systemError == EDQUOT ||
                        file.error() == QFileDevice::ResourceError;
    return isFull ? diskFull(path) : unwritable(path, file.errorString());
}

Outcome<PdfEnd> writeWhole(const QByteArray& bytes, const QString& path) {
    // Writes to a file beside it and renames; what was not committed is removed.
    QSaveFile file(path);
    errno = 0;
    if (!file.open(QIODevice::WriteOnly)) return whyNot(path, file, errno);
    errno = 0;
    if (file.write(bytes) != bytes.size() || !file.flush()) {
        const Problem problem = whyNot(path, file, errno);
        file.cancelWriting();
        return problem;
    }
    errno = 0;
    if (!file.commit()) return whyNot(path, file, errno);
    return PdfEnd::written;
}

}  // namespace

Outcome<PdfEnd> writeSheetsPdf(const std::vector<SheetDrawing>& drawings, const PdfInfo& info,
                               const QString& path, const PdfProgress& progress) {
    if (drawings.empty()) return unwritable(path, QStringLiteral("no pages"));
    if (QFileInfo(path).isDir()) return unwritable(path, QStringLiteral("is a folder"));
    const QByteArray painted = paintedPdf(drawings, progress);
    if (painted.isEmpty()) return PdfEnd::stopped;
    QByteArray bytes;
    try {
        bytes = finishedPdf(painted, drawings, info);
    } catch (const std::exception& error) {  // the PDF library throws; no stage of ours does
        return unwritable(path, QString::fromUtf8(error.what()));
    }
    return writeWhole(bytes, path);
}

}  // namespace coutil
