#pragma once

#include <QFont>
#include <QPen>
#include <QRectF>

#include "ui/canvas/flat_scene.h"
#include "ui/canvas/table_colours.h"
#include "ui/canvas/table_scene.h"
#include "ui/canvas/table_view.h"

class QPainter;

namespace coutil {

// Everything a layer of the table needs to be painted.
struct TableLook {
    const TableScene& scene;
    const FlatScene& flat;
    const TableView& view;
    const TableColours& colours;
    QRectF area;  // px, rulers included
    QFont font;
};

// The static layer: paper, sheets, panels, levels, letters, rulers. Line widths are in px.
void paintScene(QPainter& painter, const TableLook& look);

// Panels with their tint, lines, marks and number, and the lines of no panel under and over them.
void paintPanels(QPainter& painter, const TableLook& look);

// Level hairlines with their names at the left margin, seam names, caption: letters only where no
// line runs.
void paintLevels(QPainter& painter, const TableLook& look);
void paintLevelNames(QPainter& painter, const TableLook& look);
void paintLetterings(QPainter& painter, const TableLook& look);

// What the pens stand for: a stroke of each with its words, under the caption at the right.
void paintLegend(QPainter& painter, const TableLook& look);

// A pen of the scene in the look's theme, as wide in px at every zoom.
[[nodiscard]] QPen penOf(const TableLook& look, const ScenePen& pen);

// Height of the legend, px: what fitting leaves free at the top.
[[nodiscard]] double legendHeightPx(const TableScene& scene, const QFont& font);

// Signs with their words.
void paintSigns(QPainter& painter, const TableLook& look);

// Widest level name, px: the margin that fitting leaves free on the left.
[[nodiscard]] double levelMarginPx(const TableScene& scene, const QFont& font);

// What changes with the pointer: halos of the places pointed at and picked, a ring where a problem
// is, a plate with figures beside the pointer.
struct TableHighlights {
    TablePlace pointed;
    TablePlace picked;
    std::optional<QPointF> problemAtMm;
    int problemPanel = -1;
    QString plate;
    QPointF platePx;
    QString handle;  // id of the one under the pointer or dragged
};
void paintHandles(QPainter& painter, const TableLook& look, const QString& hotHandle);
void paintHighlights(QPainter& painter, const TableLook& look, const TableHighlights& highlights);

}  // namespace coutil
