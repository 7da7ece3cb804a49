#include "ui/printing/open_pdf.h"

#include <algorithm>
#include <cmath>

namespace coutil {
namespace {

constexpr double kPointsPerMm = 72 / 25.4;
// Many readers know no longer side; beyond it a page counts in larger units (ISO 32000-1, annex C
// and 14.11.2, UserUnit: from memory).
constexpr double kMostUnits = 14400;

// Six decimals, in the C locale whatever the program's is.
QByteArray real(double value) { return QByteArray::number(value, 'f', 6); }

}  // namespace

OpenPdf::OpenPdf(const QByteArray& bytes) : pdf_(qpdf_init()) {
    qpdf_silence_errors(pdf_);
    qpdf_set_suppress_warnings(pdf_, QPDF_TRUE);
    note(qpdf_read_memory(pdf_, "sheets", bytes.constData(),
                          static_cast<unsigned long long>(bytes.size()), nullptr));
}

OpenPdf::~OpenPdf() { qpdf_cleanup(&pdf_); }

std::size_t OpenPdf::pages() { return static_cast<std::size_t>(qpdf_get_num_pages(pdf_)); }

qpdf_oh OpenPdf::streamOf(const QByteArray& content) {
    const qpdf_oh stream = qpdf_oh_new_stream(pdf_);
    qpdf_oh_replace_stream_data(
        pdf_, stream, reinterpret_cast<const unsigned char*>(content.constData()),
        static_cast<size_t>(content.size()), qpdf_oh_new_null(pdf_), qpdf_oh_new_null(pdf_));
    return stream;
}

qpdf_oh OpenPdf::textOf(const QString& text) {
    const QByteArray utf8 = text.toUtf8();
    return qpdf_oh_new_unicode_string(pdf_, utf8.constData());
}

// Qt rounds the page's height to whole points and draws downwards from there; the whole page is
// moved so that the upper left corner of the exact box is the origin again.
void OpenPdf::setExactBoxes(std::size_t page, double widthMm, double heightMm) {
    const qpdf_oh leaf = qpdf_get_page_n(pdf_, page);
    const qpdf_oh rounded = qpdf_oh_get_key(pdf_, leaf, "/MediaBox");
    const double top = qpdf_oh_get_numeric_value(pdf_, qpdf_oh_get_array_item(pdf_, rounded, 3));
    const double wide = widthMm * kPointsPerMm;
    const double high = heightMm * kPointsPerMm;
    const double unit = std::max(1.0, std::ceil(std::max(wide, high) / kMostUnits));
    const QByteArray by = real(1 / unit);
    const QByteArray move = by + " 0 0 " + by + " 0 " + real((high - top) / unit) + " cm\n";
    const qpdf_oh contents = qpdf_oh_new_array(pdf_);
    qpdf_oh_append_item(pdf_, contents, streamOf(move));
    const qpdf_oh painted = qpdf_oh_get_key(pdf_, leaf, "/Contents");
    if (qpdf_oh_is_array(pdf_, painted) == QPDF_TRUE) {
        for (int i = 0; i < qpdf_oh_get_array_n_items(pdf_, painted); ++i) {
            qpdf_oh_append_item(pdf_, contents, qpdf_oh_get_array_item(pdf_, painted, i));
        }
    } else {
        qpdf_oh_append_item(pdf_, contents, painted);
    }
    qpdf_oh_replace_key(pdf_, leaf, "/Contents", contents);
    const QByteArray box = "[0 0 " + real(wide / unit) + " " + real(high / unit) + "]";
    for (const char* name : {"/MediaBox", "/CropBox", "/TrimBox"}) {
        qpdf_oh_replace_key(pdf_, leaf, name, qpdf_oh_parse(pdf_, box.constData()));
    }
    if (unit > 1) {
        qpdf_oh_replace_key(pdf_, leaf, "/UserUnit", qpdf_oh_parse(pdf_, real(unit).constData()));
    }
}

void OpenPdf::askForTrueScale() {
    qpdf_oh_replace_key(pdf_, qpdf_get_root(pdf_), "/ViewerPreferences",
                        qpdf_oh_parse(pdf_, "<< /PrintScaling /None /DisplayDocTitle true >>"));
}

void OpenPdf::setInfo(const PdfInfo& info) {
    const qpdf_oh about = qpdf_oh_new_dictionary(pdf_);
    const auto set = [&](const char* key, const QString& text) {
        qpdf_oh_replace_key(pdf_, about, key, textOf(text));
    };
    set("/Title", info.title);
    set("/Producer", QStringLiteral("Coutil"));
    if (info.date.isValid()) {
        const QString date = info.date.toUTC().toString(QStringLiteral("'D:'yyyyMMddHHmmss'Z'"));
        set("/CreationDate", date);
        set("/ModDate", date);
    }
    qpdf_oh_replace_key(pdf_, qpdf_get_trailer(pdf_), "/Info",
                        qpdf_make_indirect_object(pdf_, about));
    qpdf_oh_remove_key(pdf_, qpdf_get_root(pdf_), "/Metadata");
}

QByteArray OpenPdf::written() {
    note(qpdf_init_write_memory(pdf_));
    if (!isSound_) return {};
    qpdf_set_minimum_pdf_version(pdf_, "1.6");  // the first to know PrintScaling and UserUnit
    qpdf_set_deterministic_ID(pdf_, QPDF_TRUE);
    note(qpdf_write(pdf_));
    if (!isSound_ || qpdf_has_error(pdf_) == QPDF_TRUE) return {};
    return {reinterpret_cast<const char*>(qpdf_get_buffer(pdf_)),
            static_cast<qsizetype>(qpdf_get_buffer_length(pdf_))};
}

}  // namespace coutil
