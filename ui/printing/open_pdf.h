#pragma once

#include <QByteArray>
#include <map>
#include <vector>

#include <qpdf/qpdf-c.h>

#include "ui/printing/pdf_pages.h"

namespace coutil {

// A PDF being put right, by the C side of the PDF library: its C++ headers do not go with every
// C++20 compiler. Pages of the given bytes are parts until they are joined.
class OpenPdf {
  public:
    explicit OpenPdf(const QByteArray& bytes);
    ~OpenPdf();
    OpenPdf(const OpenPdf&) = delete;
    OpenPdf& operator=(const OpenPdf&) = delete;

    [[nodiscard]] bool isSound() const { return isSound_; }
    [[nodiscard]] std::size_t pages();

    // Puts the parts of every page over each other in the first one's place, in layers. Afterwards
    // the file has as many pages as given.
    void joinParts(const std::vector<PdfPage>& pages);

    void setExactBoxes(std::size_t page, double widthMm, double heightMm);
    void askForTrueScale();
    void setInfo(const PdfInfo& info);

    [[nodiscard]] QByteArray written();

  private:
    void note(QPDF_ERROR_CODE code) { isSound_ = isSound_ && (code & QPDF_ERRORS) == 0; }
    [[nodiscard]] qpdf_oh streamOf(const QByteArray& content);
    [[nodiscard]] qpdf_oh textOf(const QString& text);
    void joinPage(const std::vector<qpdf_oh>& leaves, const std::vector<PdfPart>& parts);
    void addResources(qpdf_oh from, qpdf_oh to);
    [[nodiscard]] qpdf_oh layerOf(LineKind kind);
    void listLayers();

    qpdf_data pdf_;
    bool isSound_ = true;
    std::map<LineKind, qpdf_oh> layers_;
};

}  // namespace coutil
