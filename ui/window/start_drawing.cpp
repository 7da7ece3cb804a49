#include "ui/window/start_drawing.h"

#include <QPainter>
#include <QTransform>
#include <algorithm>

#include "core/revision/draft_garment.h"
#include "ui/benches/pattern_scene.h"
#include "ui/window/demo_singer.h"

namespace coutil {

namespace {

constexpr double kMarginPx = 8;
constexpr double kLargestPxPerMm = 0.85;
constexpr double kLevelReachMm = 60;

}  // namespace

StartDrawing::StartDrawing(QWidget* parent) : QWidget(parent) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setMinimumHeight(120);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    const auto demo = demoSinger();
    if (!demo) return;
    const auto drafted =
        draftGarment(demo->measurementSets.front(), demo->garments.front().pencils.front().style);
    if (!drafted.pattern) return;
    const TableScene scene = patternScene(*drafted.pattern, demo->unit);
    for (const ScenePanel& panel : scene.panels) panels_.addPath(panel.sewing);
    const QRectF box = panels_.boundingRect();
    for (const SceneLevel& level : scene.levels) {
        if (level.yMm < box.top() || level.yMm > box.bottom()) continue;  // not on the panels
        levels_.moveTo(box.left() - kLevelReachMm, level.yMm);
        levels_.lineTo(box.right() + kLevelReachMm, level.yMm);
    }
}

void StartDrawing::paintEvent(QPaintEvent*) {
    if (isEmpty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = panels_.boundingRect().united(levels_.boundingRect());
    const QRectF room = QRectF(rect()).adjusted(kMarginPx, kMarginPx, -kMarginPx, -kMarginPx);
    const double scale =
        std::min({room.width() / box.width(), room.height() / box.height(), kLargestPxPerMm});
    QTransform transform;
    transform.translate(room.center().x(), room.center().y());
    transform.scale(scale, -scale);
    transform.translate(-box.center().x(), -box.center().y());
    QColor line = palette().color(QPalette::WindowText);
    line.setAlphaF(0.16F);
    painter.setPen(QPen(line, 1));
    painter.drawPath(transform.map(levels_));
    line.setAlphaF(0.42F);
    painter.setPen(QPen(line, 1.3));
    painter.drawPath(transform.map(panels_));
}

}  // namespace coutil
