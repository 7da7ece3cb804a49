#include "ui/window/quiet_style.h"

#include <QPainter>
#include <QStyleOption>

#include "ui/canvas/table_colours.h"
#include "ui/window/line_icon.h"

namespace coutil {

namespace {

constexpr double kRounding = 3;

void drawFieldFrame(const QStyleOption& option, QPainter& painter) {
    const bool isFocused = option.state.testFlag(QStyle::State_HasFocus);
    QColor colour =
        isFocused ? option.palette.color(QPalette::Highlight) : fieldFrameColour(option.palette);
    if (!option.state.testFlag(QStyle::State_Enabled)) colour.setAlphaF(0.5F);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, isFocused ? 1.8 : 1.0));
    const double inset = isFocused ? 1 : 0.5;  // on whole pixels: a thin line keeps its colour
    painter.drawRoundedRect(QRectF(option.rect).adjusted(inset, inset, -inset, -inset), kRounding,
                            kRounding);
    painter.restore();
}

void drawMenuBarItem(const QStyleOptionMenuItem& item, QPainter& painter, const QStyle& style) {
    const bool isOpen =
        item.state.testFlag(QStyle::State_Selected) && item.state.testFlag(QStyle::State_Enabled);
    painter.fillRect(item.rect,
                     item.palette.color(isOpen ? QPalette::Highlight : QPalette::Window));
    int flags = Qt::AlignCenter | Qt::TextShowMnemonic | Qt::TextSingleLine;
    if (style.styleHint(QStyle::SH_UnderlineShortcut, &item) == 0) flags |= Qt::TextHideMnemonic;
    style.drawItemText(&painter, item.rect, flags, item.palette, true, item.text,
                       isOpen ? QPalette::HighlightedText : QPalette::WindowText);
}

}  // namespace

QuietStyle::QuietStyle() : QProxyStyle(QStringLiteral("Fusion")) {
    setObjectName(QStringLiteral("quiet"));
}

void QuietStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    if (element == PE_FrameLineEdit) {
        drawFieldFrame(*option, *painter);
        return;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element == PE_IndicatorCheckBox) {  // its own frame is lost in the dark
        painter->setPen(fieldFrameColour(option->palette));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
    }
}

void QuietStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    if (element == CE_MenuBarEmptyArea) {
        painter->fillRect(option->rect, option->palette.color(QPalette::Window));
        return;
    }
    const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
    if (element == CE_MenuBarItem && item != nullptr) {
        drawMenuBarItem(*item, *painter, *this);
        return;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

QIcon QuietStyle::standardIcon(StandardPixmap which, const QStyleOption* option,
                               const QWidget* widget) const {
    if (which == SP_ToolBarHorizontalExtensionButton) return lineIcon(QStringLiteral("more_menus"));
    return QProxyStyle::standardIcon(which, option, widget);
}

QColor fieldFrameColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0x7c, 0x84, 0x90) : QColor(0x8a, 0x83, 0x77);
}

}  // namespace coutil
