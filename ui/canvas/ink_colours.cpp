#include "ui/canvas/ink_colours.h"

#include <array>

#include "core/revision/ink_line.h"

namespace coutil {

namespace {

// The hues of kInkHues, as light as a thin line on slate needs.
constexpr std::array<QRgb, kInkHues.size()> kOnSlate{0xFF4FA3DB, 0xFFF0803C, 0xFF2DBE94,
                                                     0xFFD98BB6, 0xFFE69F00, 0xFF8CCBF2};

QColor named(std::string_view colour) {
    return QColor(QLatin1String(colour.data(), static_cast<qsizetype>(colour.size())));
}

}  // namespace

InkLook inkLook(int revisionNumber, bool isDark) {
    InkLook look = inkLookOnPaper(revisionNumber);
    if (isDark) look.colour = QColor::fromRgb(kOnSlate[inkLineOf(revisionNumber).hue]);
    return look;
}

InkLook inkLookOnPaper(int revisionNumber) {
    const InkLine line = inkLineOf(revisionNumber);
    return {named(line.onPaper), QList<qreal>(line.dashPens.begin(), line.dashPens.end())};
}

QPen inkPen(const InkLook& look, double width) {
    QPen pen(look.colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (!look.dash.isEmpty()) pen.setDashPattern(look.dash);
    return pen;
}

}  // namespace coutil
