// From the Print bench to a file or a printer.
#include <QCheckBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <memory>

#include "ui/benches/job_bar.h"
#include "ui/benches/print_bench.h"
#include "ui/benches/sheet_job.h"
#include "ui/benches/shown_title.h"
#include "ui/document/folio_document.h"
#include "ui/printing/pdf_file.h"
#include "ui/printing/print_sheets.h"
#include "ui/words/problem_sentence.h"
#include "ui/words/sheet_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

// A file name without what file systems or shells stumble over.
QString fileNameOf(const QString& garment) {
    QString name;
    for (const QChar c : garment) name += c.isLetterOrNumber() ? c : QLatin1Char('-');
    return name.isEmpty() ? QStringLiteral("sheets") : name;
}

QString askByDialog(QWidget* window, const QString& suggestion) {
    return QFileDialog::getSaveFileName(window, PrintBench::tr("Export the sheets"), suggestion,
                                        PrintBench::tr("PDF files (*.pdf)"));
}

}  // namespace

std::vector<SheetDrawing> PrintBench::drawings() const {
    const auto& tracings = document().drafted().tracings;
    if (!plan_ || !tracings) return {};
    TracingTitle title = shownTitle(document(), today_.value_or(QDate::currentDate()));
    if (!client_->isChecked()) title.client.clear();
    const auto& body = document().drafted().body;
    const SheetWords words = sheetWords(title, body ? body->estimates : std::vector<Estimate>(),
                                        plan_->options, document().folio().unit);
    return drawSheets(*plan_, *tracings, words);
}

void PrintBench::exportPdf() {
    if (!plan_ || job_->isRunning()) return;
    const QString folder =
        document().file().empty()
            ? QDir::homePath()
            : QFileInfo(QString::fromStdString(document().file().string())).absolutePath();
    const QString garment = QString::fromStdString(document().garment()->name);
    const QString suggestion =
        folder + QLatin1Char('/') + fileNameOf(garment) + QLatin1Char('-') +
        QString::fromStdString(options_.paper.name).remove(QLatin1Char(' ')) +
        QStringLiteral(".pdf");
    QString path = (askPath_ ? askPath_ : AskPath(askByDialog))(window(), suggestion);
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".pdf");
    exportPath_ = path;
    PdfInfo info;
    info.title = garment;
    info.date = today_.value_or(QDate::currentDate()).startOfDay();
    jobBar_->begin(tr("Writing the sheets"));
    job_->start([pages = drawings(), info, path](const PdfProgress& progress) {
        return writeSheetsPdf(pages, info, path, progress);
    });
    showPlanWords();
}

void PrintBench::print(bool firstPageOnly) {
    if (!plan_ || job_->isRunning()) return;
    auto pages = drawings();
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    setUpPrinter(*printer, pages);
    QPrintDialog dialog(printer.get(), window());
    if (!firstPageOnly) {
        dialog.setOption(QAbstractPrintDialog::PrintPageRange);
        dialog.setMinMax(1, static_cast<int>(pages.size()));
    }
    if (dialog.exec() != QDialog::Accepted) return;
    setUpPrinter(*printer, pages);
    const double unprintable = unprintableMarginMm(*printer);
    if (unprintable * 1000 > static_cast<double>(options_.marginUm)) {
        emit message(tr("This printer leaves %1 at the edge of the paper. Set the margin to at "
                        "least that, or lines will be missing.")
                         .arg(lengthText(unprintable, document().folio().unit)),
                     true);
        return;
    }
    std::size_t first = 0;
    std::size_t last = firstPageOnly ? 0 : pages.size() - 1;
    if (!firstPageOnly && printer->fromPage() > 0) {
        first = static_cast<std::size_t>(printer->fromPage()) - 1;
        last = std::min(last, static_cast<std::size_t>(printer->toPage()) - 1);
    }
    exportPath_.clear();
    jobBar_->begin(tr("Printing"));
    job_->start([printer, first, last, pages = std::move(pages)](const PdfProgress& progress) {
        return printSheets(*printer, pages, first, last, progress);
    });
    showPlanWords();
}

void PrintBench::tellEnd(const Problem* problem, bool wasStopped) {
    jobBar_->end();
    showPlanWords();
    if (problem != nullptr) {
        emit message(problemSentence(*problem, document().folio().unit), true);
    } else if (wasStopped) {
        emit message(tr("Stopped; nothing was written."), false);
    } else if (exportPath_.isEmpty()) {
        emit message(tr("The sheets are with the printer."), false);
    } else {
        emit message(tr("Sheets written to %1. Print at 100 %, actual size.").arg(exportPath_),
                     false);
        emit exported(exportPath_);
    }
}

}  // namespace coutil
