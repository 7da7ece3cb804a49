#include <QPainter>

#include "ui/canvas/scene_painter.h"

namespace coutil {

namespace {
constexpr double kRadiusPx = 5;
constexpr double kHotRadiusPx = 7;
}  // namespace

void paintHandles(QPainter& painter, const TableLook& look, const QString& hotHandle) {
    for (const SceneHandle& handle : look.scene.handles) {
        const bool isHot = handle.id == hotHandle;
        const double radiusPx = isHot ? kHotRadiusPx : kRadiusPx;
        painter.setPen(QPen(look.colours.halo, 2));
        painter.setBrush(isHot ? look.colours.halo : look.colours.paper);
        painter.drawEllipse(look.view.toPx(handle.atMm), radiusPx, radiusPx);
    }
}

}  // namespace coutil
