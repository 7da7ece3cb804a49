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
    // The sign of folded menus in the text colour: 4.5 : 1 in every theme.
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option,
                       const QWidget* widget) const override;
};

[[nodiscard]] QColor fieldFrameColour(const QPalette& palette);

}  // namespace coutil
