#include "ui/canvas/ruler.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QVarLengthArray>
#include <array>
#include <cmath>
#include <span>

namespace coutil {

namespace {

constexpr double kFiguresApartPx = 46;
constexpr double kTicksApartPx = 5;
constexpr double kInchMm = 25.4;

constexpr std::array kMetricMm{0.1, 0.2, 0.5,  1.0,  2.0,  5.0,   10.0,
                               20., 50., 100., 200., 500., 1000., 2000.};
constexpr std::array kInchesMm{kInchMm / 16, kInchMm / 8, kInchMm / 4,  kInchMm / 2,  kInchMm,
                               kInchMm * 2,  kInchMm * 6, kInchMm * 12, kInchMm * 36, kInchMm * 72};

bool divides(double small, double large) {
    const double times = large / small;
    return std::abs(times - std::round(times)) < 1e-6;
}

struct Axis {
    bool isAcross = true;
    double zeroMm = 0;
    double fromMm = 0;
    double toMm = 0;
};

QString figure(double mm, LengthUnit unit) {
    const QString mark = QLocale().decimalPoint();
    const char point = mark == QLatin1String(",") ? ',' : '.';
    return QString::fromStdString(writtenLength(std::abs(mm) < 1e-9 ? 0 : mm, unit, point));
}

void paintAxis(QPainter& painter, const QRectF& area, const TableView& view, LengthUnit unit,
               const Axis& axis) {
    const RulerSteps steps = rulerSteps(unit, view.pxPerMm());
    const long long perLabel = std::llround(steps.labelMm / steps.tickMm);
    const auto first =
        static_cast<long long>(std::floor((axis.fromMm - axis.zeroMm) / steps.tickMm));
    const auto last = static_cast<long long>(std::ceil((axis.toMm - axis.zeroMm) / steps.tickMm));
    const QFontMetricsF metrics(painter.font());
    QVarLengthArray<QLineF, 512> ticks;
    for (long long i = first; i <= last; ++i) {
        const double mm = axis.zeroMm + static_cast<double>(i) * steps.tickMm;
        const bool isFigure = i % perLabel == 0;
        const double tick = isFigure ? 7 : (perLabel % 2 == 0 && i % (perLabel / 2) == 0 ? 5 : 3);
        const QString text =
            isFigure ? figure(static_cast<double>(i) * steps.tickMm, unit) : QString();
        if (axis.isAcross) {
            const double x = std::round(view.toPx(QPointF(mm, 0)).x()) + 0.5;
            if (x < area.left() + kSideRulerPx) continue;
            const double foot = area.top() + kTopRulerPx;
            ticks.append(QLineF(x, foot - tick, x, foot));
            if (isFigure) painter.drawText(QPointF(x + 3, foot - 7), text);
        } else {
            const double y = std::round(view.toPx(QPointF(0, mm)).y()) + 0.5;
            if (y < area.top() + kTopRulerPx) continue;
            const double foot = area.left() + kSideRulerPx;
            ticks.append(QLineF(foot - tick, y, foot, y));
            const double width = metrics.horizontalAdvance(text);
            if (isFigure) {
                painter.drawText(QPointF(foot - 9 - width, y + metrics.capHeight() / 2), text);
            }
        }
    }
    painter.drawLines(ticks.constData(), static_cast<int>(ticks.size()));
}

}  // namespace

RulerSteps rulerSteps(LengthUnit unit, double pxPerMm) {
    const bool isInch = unit == LengthUnit::inch;
    const std::span<const double> steps =
        isInch ? std::span<const double>(kInchesMm) : std::span<const double>(kMetricMm);
    RulerSteps chosen{steps.back(), steps.back()};
    for (const double step : steps) {
        if (step * pxPerMm < kFiguresApartPx) continue;
        chosen.labelMm = step;
        break;
    }
    chosen.tickMm = chosen.labelMm;
    for (const double step : steps) {
        if (step * pxPerMm < kTicksApartPx || !divides(step, chosen.labelMm)) continue;
        chosen.tickMm = step;
        break;
    }
    return chosen;
}

void paintRulers(QPainter& painter, const QRectF& area, const TableView& view, LengthUnit unit,
                 const QPointF& zeroMm, const TableColours& colours, const QFont& font) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(area.left(), area.top(), area.width(), kTopRulerPx), colours.ruler);
    painter.fillRect(QRectF(area.left(), area.top(), kSideRulerPx, area.height()), colours.ruler);
    QFont small(font);
    small.setPixelSize(10);
    painter.setFont(small);
    painter.setPen(QPen(colours.text, 0));
    const QPointF low = view.toMm(area.bottomLeft());
    const QPointF high = view.toMm(area.topRight());
    paintAxis(painter, area, view, unit, {true, zeroMm.x(), low.x(), high.x()});
    paintAxis(painter, area, view, unit, {false, zeroMm.y(), low.y(), high.y()});
    // The corner tells the unit.
    const QRectF corner(area.left(), area.top(), kSideRulerPx, kTopRulerPx);
    painter.fillRect(corner, colours.ruler);
    painter.drawText(corner, Qt::AlignCenter, QString::fromUtf8(keyOf(unit).data()));
    painter.restore();
}

}  // namespace coutil
