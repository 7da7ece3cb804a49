// From the Compare bench to a file or a printer.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <algorithm>

#include "core/store/export_file.h"
#include "ui/benches/compare_bench.h"
#include "ui/benches/compare_choices.h"
#include "ui/comparing/compared_svg.h"
#include "ui/document/folio_document.h"
#include "ui/printing/compare_pdf.h"
#include "ui/printing/print_sheets.h"
#include "ui/words/problem_sentence.h"

namespace coutil {

namespace {

QString askByDialog(QWidget* window, const QString& suggestion) {
    return QFileDialog::getSaveFileName(window, CompareBench::tr("Save the comparison"), suggestion,
                                        suggestion.endsWith(QLatin1String(".svg"))
                                            ? CompareBench::tr("SVG files (*.svg)")
                                            : CompareBench::tr("PDF files (*.pdf)"));
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

QString CompareBench::askWhere(const QString& ending) {
    const QString folder =
        document().file().empty()
            ? QDir::homePath()
            : QFileInfo(QString::fromStdString(document().file().string())).absolutePath();
    const QString suggestion = folder + QLatin1Char('/') + plainName(titleOf(*states())) + ending;
    QString path = (askPath_ ? askPath_ : AskPath(askByDialog))(window(), suggestion);
    if (!path.isEmpty() && QFileInfo(path).suffix().isEmpty()) path += ending;
    return path;
}

void CompareBench::tellWritten(const QString& path, const std::vector<Problem>& problems) {
    if (!problems.empty()) {
        emit message(problemSentence(problems.front(), document().folio().unit), true);
        return;
    }
    emit message(tr("Comparison written to %1.").arg(path), false);
    emit exported(path);
}

void CompareBench::exportPdf() {
    const auto now = states();
    if (!now) return;
    const QString path = askWhere(QStringLiteral(".pdf"));
    if (path.isEmpty()) return;
    tellWritten(path, writeComparePdf(*now, paper(), today(), path).problems);
}

void CompareBench::exportSvg() {
    const auto now = states();
    if (!now) return;
    const QString path = askWhere(QStringLiteral(".svg"));
    if (path.isEmpty()) return;
    const auto problem = writeExport(path.toStdString(), comparedSvg(*now));
    tellWritten(path, problem ? std::vector{*problem} : std::vector<Problem>());
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

// Only between states of the garment on the table: a paper master is of one garment.
bool CompareBench::hasChangeSheet() {
    const Garment* garment = document().garment();
    if (garment == nullptr || !states() || states_->areSides) return false;
    const auto isOfIt = [&](const StateRef& state) {
        return findPencil(*garment, state.pencil) != nullptr ||
               std::ranges::any_of(garment->revisions, [&](const auto& revision) {
                   return revision->digest() == state.digest;
               });
    };
    return isOfIt(choices_->a()) && isOfIt(choices_->b());
}

// A change sheet is of what is on the table, so B goes there; what is compared stays.
void CompareBench::askChangeSheet() {
    if (!hasChangeSheet()) return;
    const StateRef a = choices_->a();
    const StateRef b = choices_->b();
    if (!b.digest.empty()) {
        document().showRevision(b.digest);
    } else {
        document().showPencil(b.pencil);
    }
    choices_->choose(a, b);
    emit changeSheetWanted(a);
}

}  // namespace coutil
