#include "ui/canvas/table_scene.h"

namespace coutil {

QRectF boundsOf(const TableScene& scene) {
    QRectF box;
    for (const ScenePanel& panel : scene.panels) {
        box |= panel.cutting.isEmpty() ? panel.sewing.boundingRect() : panel.cutting.boundingRect();
    }
    for (const SceneSheet& sheet : scene.sheets) box |= sheet.frame;
    for (const SceneDrawing& drawing : scene.drawings) box |= drawing.place;
    for (const SceneStroke& stroke : scene.strokes) box |= stroke.path.boundingRect();
    return box | scene.room;
}

}  // namespace coutil
