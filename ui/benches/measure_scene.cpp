#include "ui/benches/measure_scene.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QPalette>

#include "ui/benches/pattern_scene.h"
#include "ui/benches/shown_title.h"
#include "ui/benches/tape_figure.h"
#include "ui/benches/tape_line.h"
#include "ui/canvas/table_colours.h"
#include "ui/document/folio_document.h"
#include "ui/fields/text_colours.h"

namespace coutil {

namespace {

constexpr double kMmPerCm = 10;

FigureColours coloursOnTable() {
    const QPalette palette = QGuiApplication::palette();
    const TableColours& colours = tableColours(isDark(palette));
    return {colours.graphite, colours.level, tapeColour(palette)};
}

// The drawn body at the size of life, its waist at the rulers' 0, where the panels will have
// theirs.
SceneDrawing bodyDrawing(std::optional<Measurement> shown) {
    const QRectF frame = figureFrame(shown ? tapeLineOf(*shown).view : FigureView::front);
    SceneDrawing drawing;
    drawing.place = QRectF(frame.left() * kMmPerCm, (frame.top() - figure::kWaist) * kMmPerCm,
                           frame.width() * kMmPerCm, frame.height() * kMmPerCm);
    const QSizeF size = drawing.place.size();
    drawing.paint = [size, shown](QPainter& painter) {
        paintTapeFigure(painter, QRectF(QPointF(0, 0), size), shown, coloursOnTable());
    };
    return drawing;
}

}  // namespace

TableScene measureScene(const FolioDocument& document, std::optional<Measurement> shown) {
    const auto words = [](const char* text) {
        return QCoreApplication::translate("MeasureScene", text);
    };
    const auto& pattern = document.lastGoodDraft().pattern;
    TableScene scene;
    if (pattern) {
        scene = patternScene(*pattern, document.folio().unit);
        captionScene(scene, document);
    } else {
        scene.caption = words(QT_TRANSLATE_NOOP(
            "MeasureScene", "The panels draw themselves once the needed readings are there"));
        scene.drawings.push_back(bodyDrawing(shown));
    }
    scene.unit = document.folio().unit;
    return scene;
}

}  // namespace coutil
