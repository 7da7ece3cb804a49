#pragma once

#include <QProxyStyle>

namespace coutil {

// Fusion with thinner manners: menus without a line under them, fields with a frame that can be
// seen in the dark theme too (3 : 1 against the window; WCAG 2.1, 1.4.11).
class QuietStyle : public QProxyStyle {
    Q_OBJECT

  public:
    QuietStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
};

[[nodiscard]] QColor fieldFrameColour(const QPalette& palette);

}  // namespace coutil
