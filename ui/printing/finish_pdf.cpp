#include <qpdf/qpdf-c.h>

#include "ui/printing/pdf_pages.h"

namespace coutil {
namespace {

constexpr double kPointsPerMm = 72 / 25.4;

// Six decimals, in the C locale whatever the program's is.
QByteArray real(double value) { return QByteArray::number(value, 'f', 6); }

// The PDF library's C side: its C++ headers do not go with every C++20 compiler.
class OpenPdf {
  public:
    explicit OpenPdf(const QByteArray& bytes) : pdf_(qpdf_init()) {
        qpdf_silence_errors(pdf_);
        qpdf_set_suppress_warnings(pdf_, QPDF_TRUE);
        note(qpdf_read_memory(pdf_, "sheets", bytes.constData(),
                              static_cast<unsigned long long>(bytes.size()), nullptr));
    }
    ~OpenPdf() { qpdf_cleanup(&pdf_); }
    OpenPdf(const OpenPdf&) = delete;
    OpenPdf& operator=(const OpenPdf&) = delete;

    [[nodiscard]] bool isSound() const { return isSound_; }

    // Qt rounds the page's height to whole points and draws downwards from there; the whole page is
    // moved so that the upper left corner of the exact box is the origin again.
    void setExactBoxes(std::size_t page, const SheetDrawing& drawing) {
        const qpdf_oh leaf = qpdf_get_page_n(pdf_, page);
        const qpdf_oh rounded = qpdf_oh_get_key(pdf_, leaf, "/MediaBox");
        const double top =
            qpdf_oh_get_numeric_value(pdf_, qpdf_oh_get_array_item(pdf_, rounded, 3));
        const double wide = drawing.widthMm * kPointsPerMm;
        const double high = drawing.heightMm * kPointsPerMm;
        const QByteArray move = "1 0 0 1 0 " + real(high - top) + " cm\n";
        const qpdf_oh stream = qpdf_oh_new_stream(pdf_);
        qpdf_oh_replace_stream_data(
            pdf_, stream, reinterpret_cast<const unsigned char*>(move.constData()),
            static_cast<size_t>(move.size()), qpdf_oh_new_null(pdf_), qpdf_oh_new_null(pdf_));
        const qpdf_oh contents = qpdf_oh_new_array(pdf_);
        qpdf_oh_append_item(pdf_, contents, stream);
        qpdf_oh_append_item(pdf_, contents, qpdf_oh_get_key(pdf_, leaf, "/Contents"));
        qpdf_oh_replace_key(pdf_, leaf, "/Contents", contents);
        const QByteArray box = "[0 0 " + real(wide) + " " + real(high) + "]";
        for (const char* name : {"/MediaBox", "/CropBox", "/TrimBox"}) {
            qpdf_oh_replace_key(pdf_, leaf, name, qpdf_oh_parse(pdf_, box.constData()));
        }
    }

    void askForTrueScale() {
        qpdf_oh_replace_key(pdf_, qpdf_get_root(pdf_), "/ViewerPreferences",
                            qpdf_oh_parse(pdf_, "<< /PrintScaling /None /DisplayDocTitle true >>"));
    }

    void setInfo(const PdfInfo& info) {
        const qpdf_oh about = qpdf_oh_new_dictionary(pdf_);
        const auto set = [&](const char* key, const QString& text) {
            const QByteArray utf8 = text.toUtf8();
            qpdf_oh_replace_key(pdf_, about, key,
                                qpdf_oh_new_unicode_string(pdf_, utf8.constData()));
        };
        set("/Title", info.title);
        set("/Producer", QStringLiteral("Coutil"));
        if (info.date.isValid()) {
            const QString date =
                info.date.toUTC().toString(QStringLiteral("'D:'yyyyMMddHHmmss'Z'"));
            set("/CreationDate", date);
            set("/ModDate", date);
        }
        qpdf_oh_replace_key(pdf_, qpdf_get_trailer(pdf_), "/Info",
                            qpdf_make_indirect_object(pdf_, about));
        qpdf_oh_remove_key(pdf_, qpdf_get_root(pdf_), "/Metadata");
    }

    QByteArray written() {
        note(qpdf_init_write_memory(pdf_));
        if (!isSound_) return {};
        qpdf_set_minimum_pdf_version(pdf_, "1.6");  // the first to know PrintScaling
        qpdf_set_deterministic_ID(pdf_, QPDF_TRUE);
        note(qpdf_write(pdf_));
        if (!isSound_ || qpdf_has_error(pdf_) == QPDF_TRUE) return {};
        return {reinterpret_cast<const char*>(qpdf_get_buffer(pdf_)),
                static_cast<qsizetype>(qpdf_get_buffer_length(pdf_))};
    }

  private:
    void note(QPDF_ERROR_CODE code) { isSound_ = isSound_ && (code & QPDF_ERRORS) == 0; }

    qpdf_data pdf_;
    bool isSound_ = true;
};

}  // namespace

QByteArray finishedPdf(const QByteArray& painted, const std::vector<SheetDrawing>& drawings,
                       const PdfInfo& info) {
    OpenPdf pdf(painted);
    if (!pdf.isSound()) return {};
    for (std::size_t i = 0; i < drawings.size(); ++i) pdf.setExactBoxes(i, drawings[i]);
    pdf.askForTrueScale();
    pdf.setInfo(info);
    return pdf.written();
}

}  // namespace coutil
