// From the dialog of a paper to a file or a printer.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>

#include "ui/document/folio_document.h"
#include "ui/printing/pdf_file.h"
#include "ui/printing/print_sheets.h"
#include "ui/window/paper_dialog.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

QString askByDialog(QWidget* window, const QString& suggestion) {
    return QFileDialog::getSaveFileName(window, PaperDialog::tr("Save the paper"), suggestion,
                                        PaperDialog::tr("PDF files (*.pdf)"));
}

}  // namespace

QString PaperDialog::suggestion() const {
    const QString folder =
        document_.file().empty()
            ? QDir::homePath()
            : QFileInfo(QString::fromStdString(document_.file().string())).absolutePath();
    QString name;
    for (const QChar c : paperName(kind_)) name += c.isLetterOrNumber() ? c : QLatin1Char('-');
    return folder + QLatin1Char('/') + name + QStringLiteral(".pdf");
}

void PaperDialog::savePdf() {
    if (pages_.empty()) return;
    QString path = (askPath_ ? askPath_ : AskPath(askByDialog))(this, suggestion());
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".pdf");
    const auto end = writeSheetsPdf(pages_, {paperName(kind_), today_.startOfDay()}, path);
    if (!end) {
        emit failed(end.problems.front());
        return;
    }
    emit told(tr("%1 written to %2.").arg(paperName(kind_), path));
}

void PaperDialog::print() {
    if (pages_.empty()) return;
    QPrinter printer(QPrinter::HighResolution);
    setUpPrinter(printer, pages_);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    setUpPrinter(printer, pages_);
    const double unprintable = unprintableMarginMm(printer);
    if (unprintable > pages_.front().marginMm) {
        emit told(tr("This printer leaves %1 at the edge of the paper: something will be missing "
                     "there. Save as PDF and print it elsewhere.")
                      .arg(lengthText(unprintable, document_.folio().unit)));
        return;
    }
    const auto end = printSheets(printer, pages_, 0, pages_.size() - 1);
    if (!end) {
        emit failed(end.problems.front());
        return;
    }
    emit told(tr("The %1 is with the printer.").arg(paperName(kind_)));
}

}  // namespace coutil
