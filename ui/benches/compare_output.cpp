// From the Compare bench to a file or a printer.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>

#include "ui/benches/compare_bench.h"
#include "ui/benches/compare_choices.h"
#include "ui/document/folio_document.h"
#include "ui/printing/compare_pdf.h"
#include "ui/printing/print_sheets.h"
#include "ui/words/problem_sentence.h"

namespace coutil {

namespace {

QString askByDialog(QWidget* window, const QString& suggestion) {
    return QFileDialog::getSaveFileName(window, CompareBench::tr("Save the comparison"), suggestion,
                                        CompareBench::tr("PDF files (*.pdf)"));
}

// Without what file systems or shells stumble over.
QString plainName(const QString& words) {
    QString name;
    for (const QChar c : words) name += c.isLetterOrNumber() ? c : QLatin1Char('-');
    return name;
}

}  // namespace

std::vector<SheetDrawing> CompareBench::pages() {
    const auto now = states();
    return now ? comparePages(*now, paper()) : std::vector<SheetDrawing>();
}

QDate CompareBench::today() const { return today_.value_or(QDate::currentDate()); }

ComparePaper CompareBench::paper() {
    return comparePaper(document().folio(), *states(), today(), choices_->factor());
}

void CompareBench::exportPdf() {
    const auto now = states();
    if (!now) return;
    const QString folder =
        document().file().empty()
            ? QDir::homePath()
            : QFileInfo(QString::fromStdString(document().file().string())).absolutePath();
    const QString suggestion =
        folder + QLatin1Char('/') + plainName(titleOf(*now)) + QStringLiteral(".pdf");
    QString path = (askPath_ ? askPath_ : AskPath(askByDialog))(window(), suggestion);
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".pdf");
    const auto written = writeComparePdf(*now, paper(), today(), path);
    if (!written.value) {
        emit message(problemSentence(written.problems.front(), document().folio().unit), true);
        return;
    }
    emit message(tr("Comparison written to %1.").arg(path), false);
    emit exported(path);
}

void CompareBench::print() {
    const std::vector<SheetDrawing> drawings = pages();
    if (drawings.empty()) return;
    QPrinter printer(QPrinter::HighResolution);
    setUpPrinter(printer, drawings);
    QPrintDialog dialog(&printer, window());
    if (dialog.exec() != QDialog::Accepted) return;
    setUpPrinter(printer, drawings);
    const auto printed = printSheets(printer, drawings, 0, drawings.size() - 1);
    if (!printed.value) {
        emit message(problemSentence(printed.problems.front(), document().folio().unit), true);
        return;
    }
    emit message(tr("The comparison is with the printer."), false);
}

}  // namespace coutil
