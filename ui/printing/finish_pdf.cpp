// The PDF library then uses std::shared_ptr throughout.
#define POINTERHOLDER_TRANSITION 4

#include <cmath>
#include <memory>
#include <string>

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "ui/printing/pdf_pages.h"

namespace coutil {
namespace {

constexpr double kPointsPerMm = 72 / 25.4;

double points(double mm) { return std::round(mm * kPointsPerMm * 1e6) / 1e6; }

QPDFObjectHandle boxFor(const SheetDrawing& drawing) {
    auto box = QPDFObjectHandle::newArray();
    for (const double side : {0.0, 0.0, points(drawing.widthMm), points(drawing.heightMm)}) {
        box.appendItem(QPDFObjectHandle::newReal(side, 6));
    }
    return box;
}

// Qt rounds the page's height to whole points and draws downwards from there; the whole page is
// moved so that the upper left corner of the exact box is the origin again.
void setExactBoxes(QPDF& pdf, QPDFPageObjectHelper& page, const SheetDrawing& drawing) {
    const auto rounded = page.getAttribute("/MediaBox", false).getArrayAsRectangle();
    const double down = points(drawing.heightMm) - rounded.ury;
    const std::string move =
        "1 0 0 1 0 " + QPDFObjectHandle::newReal(down, 6).getRealValue() + " cm\n";
    page.addPageContents(QPDFObjectHandle::newStream(&pdf, move), true);
    for (const char* name : {"/MediaBox", "/CropBox", "/TrimBox"}) {
        page.getObjectHandle().replaceKey(name, boxFor(drawing));
    }
}

void askForTrueScale(QPDF& pdf) {
    auto viewer = QPDFObjectHandle::newDictionary();
    viewer.replaceKey("/PrintScaling", QPDFObjectHandle::newName("/None"));
    viewer.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    pdf.getRoot().replaceKey("/ViewerPreferences", viewer);
}

void setInfo(QPDF& pdf, const PdfInfo& info) {
    auto dictionary = QPDFObjectHandle::newDictionary();
    dictionary.replaceKey("/Title",
                          QPDFObjectHandle::newUnicodeString(info.title.toUtf8().toStdString()));
    dictionary.replaceKey("/Producer", QPDFObjectHandle::newUnicodeString("Coutil"));
    if (info.date.isValid()) {
        const QString date = info.date.toUTC().toString(QStringLiteral("'D:'yyyyMMddHHmmss'Z'"));
        dictionary.replaceKey("/CreationDate", QPDFObjectHandle::newString(date.toStdString()));
        dictionary.replaceKey("/ModDate", QPDFObjectHandle::newString(date.toStdString()));
    }
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(dictionary));
    pdf.getRoot().removeKey("/Metadata");
}

}  // namespace

QByteArray finishedPdf(const QByteArray& painted, const std::vector<SheetDrawing>& drawings,
                       const PdfInfo& info) {
    QPDF pdf;
    pdf.processMemoryFile("sheets", painted.constData(), static_cast<size_t>(painted.size()));
    auto pages = QPDFPageDocumentHelper(pdf).getAllPages();
    for (std::size_t i = 0; i < pages.size() && i < drawings.size(); ++i) {
        setExactBoxes(pdf, pages[i], drawings[i]);
    }
    askForTrueScale(pdf);
    setInfo(pdf, info);
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setMinimumPDFVersion("1.6");  // the first to know PrintScaling
    writer.setDeterministicID(true);
    writer.write();
    const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()),
            static_cast<qsizetype>(buffer->getSize())};
}

}  // namespace coutil
