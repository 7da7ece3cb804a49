#include "ui/papers/eyelet_gauge.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <QTransform>
#include <algorithm>

#include "core/making_up/eyelets.h"
#include "ui/papers/page_writer.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Booklet)
};

constexpr double kStripMm = 62;    // from one strip to the next
constexpr double kOverlapMm = 10;  // of the edge that two strips share
constexpr double kTickMm = 6;

QString fromWaist(double mm, LengthUnit unit) {
    return (mm > 0 ? QStringLiteral("+") : QString()) + lengthText(mm, unit);
}

class Gauge {
  public:
    Gauge(PageWriter& page, const Eyelets& eyelets, double columnMm, double diameterMm,
          LengthUnit unit)
        : page_(page),
          eyelets_(eyelets),
          columnMm_(columnMm),
          diameterMm_(diameterMm),
          unit_(unit) {}

    double draw(double topMm) {
        topMm_ = topMm;
        double lowMm = eyelets_.stretch.bottomMm;
        const double highMm = eyelets_.stretch.topMm;
        double leftMm = page_.leftMm() + 2;
        double endMm = topMm;
        for (bool isFirst = true; isFirst || lowMm < highMm - kOverlapMm; isFirst = false) {
            if (leftMm + kStripMm > page_.rightMm()) {
                page_.newPage();
                topMm_ = page_.topMm();
                leftMm = page_.leftMm() + 2;
            }
            const double upTo = std::min(highMm, lowMm + page_.bottomMm() - topMm_);
            strip(leftMm, lowMm, upTo);
            endMm = topMm_ + upTo - lowMm;
            if (upTo >= highMm) break;
            lowMm = upTo - kOverlapMm;
            leftMm += kStripMm;
        }
        return endMm + 6;
    }

  private:
    // One strip from `lowMm` to `highMm` along the edge, its upper end at the top.
    void strip(double leftMm, double lowMm, double highMm) {
        const auto y = [&](double mm) { return topMm_ + highMm - mm; };
        page_.line({leftMm, y(highMm)}, {leftMm, y(lowMm)}, 0.5, SheetInk::sewing);
        for (const double end : {lowMm, highMm}) tickAt(leftMm, y(end));
        if (lowMm <= 0 && highMm >= 0) {
            page_.line({leftMm - 2, y(0)}, {leftMm + 24, y(0)}, 0.25, SheetInk::level);
            page_.text(levelName("waist"), {leftMm + 25, y(0) + 0.8}, letters::kSmall, 24);
        }
        for (const EyeletPair& pair : eyelets_.pairs) {
            if (pair.positionMm < lowMm || pair.positionMm > highMm) continue;
            eyelet({leftMm + columnMm_, y(pair.positionMm)});
            const bool isAtWaist = std::abs(pair.positionMm) < letters::kSmall;
            page_.text(
                fromWaist(pair.positionMm, unit_),
                {leftMm + columnMm_ + diameterMm_ + 2, y(pair.positionMm) + (isAtWaist ? -1 : 0.8)},
                letters::kSmall, 30);
        }
    }
    void tickAt(double x, double y) {
        page_.line({x, y}, {x + kTickMm, y}, 0.25, SheetInk::sewing);
    }
    void eyelet(const QPointF& middle) {
        QPainterPath ring;
        ring.addEllipse(middle, diameterMm_ / 2, diameterMm_ / 2);
        const QRectF whole(0, 0, 2 * page_.rightMm(), 2 * page_.bottomMm());
        page_.drawing(ring, QTransform(), whole, 0.25, SheetInk::notch);
        page_.line(middle - QPointF(1, 0), middle + QPointF(1, 0), 0.15, SheetInk::notch);
        page_.line(middle - QPointF(0, 1), middle + QPointF(0, 1), 0.15, SheetInk::notch);
    }

    PageWriter& page_;
    const Eyelets& eyelets_;
    double columnMm_;
    double diameterMm_;
    LengthUnit unit_;
    double topMm_ = 0;
};

}  // namespace

double drawEyeletGauge(PageWriter& page, const Eyelets& eyelets, double columnMm, double diameterMm,
                       LengthUnit unit, double topMm) {
    const double y = page.paragraph(
        Words::tr("True to scale, if this page is printed at 100 %: measure the line of 100 mm "
                  "first. Lay the thick line along the finished back edge, waist on waist mark, "
                  "and mark through the middle of every eyelet; turn the paper over for the other "
                  "side."),
        page.leftMm(), topMm, page.roomMm(), letters::kText);
    const double barY = y + 5;
    page.line({page.leftMm(), barY}, {page.leftMm() + 100, barY}, 0.25);
    for (const double x : {0.0, 100.0})
        page.line({page.leftMm() + x, barY - 2}, {page.leftMm() + x, barY + 2}, 0.25);
    page.text(QStringLiteral("100 mm"), {page.leftMm() + 103, barY + 0.9}, letters::kSmall);
    return Gauge(page, eyelets, columnMm, diameterMm, unit).draw(barY + 6);
}

}  // namespace coutil
