#pragma once

#include <QDate>
#include <QString>

#include "core/sheets/paper.h"
#include "core/units/length.h"

namespace coutil {

class PageWriter;

// What the head of a paper to post says. Nothing else about the client goes on it.
struct PaperHead {
    Paper paper{"A4", 210000, 297000};
    LengthUnit unit = LengthUnit::centimetre;
    QString client{};   // label; empty: left out
    QString garment{};  // may be empty
    QString state{};    // "revision 2, 18/03/2026", "pencil"; may be empty
    QDate printedOn{};
};

inline constexpr double kPaperMarginMm = 14;

// "Garment, revision 2, ..., for client. Printed ... Page %1 of %2" as the PageWriter wants it.
[[nodiscard]] QString paperFooter(const PaperHead& head);

// Title, and under it garment, state and client; returns where the text may begin.
double writePaperHead(PageWriter& page, const QString& title, const PaperHead& head);

}  // namespace coutil
