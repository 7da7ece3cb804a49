#pragma once

#include <QLineF>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

#include "core/units/length.h"

class QPainter;

// What lies on the table, as one value: shapes and words, no document. All coordinates are
// millimetres with y UP; the benches build a scene, the table only shows it.
namespace coutil {

// Whose line it is, whatever the theme: the scene's own pen (pencil or ink), graphite, or the ink
// of one confirmed revision with its colour and dash.
struct ScenePen {
    enum class Ink { scene, graphite, revision };
    Ink ink = Ink::scene;
    int revision = 0;       // its number
    bool isPale = false;    // an old line: thinner, drawn back
    bool isDotted = false;  // the second of two graphite lines

    bool operator==(const ScenePen&) const = default;
};

// A line of no panel: looked at only, the pointer passes over it.
struct SceneStroke {
    QPainterPath path;
    ScenePen pen;
    bool isUnderPanels = false;  // under their lines, over their tint
};

// What a pen on the table stands for.
struct SceneLegendRow {
    ScenePen pen;
    QString words;
};

// An edge of a panel on the table.
struct SceneEdgeRef {
    int panel = -1;
    int edge = -1;
    bool operator==(const SceneEdgeRef&) const = default;
};

// One named stretch of a panel's sewing line: what the pointer can find.
struct SceneEdge {
    QString name;     // "seam 1-2", translated
    QString figures;  // lines shown while the pointer is on it
    QPainterPath path;
    bool isFold = false;                  // drawn dash-dotted
    std::optional<SceneEdgeRef> partner;  // the other edge of the same seam
    // What is shown instead of `figures` while the pointer is on it, by the place in mm.
    std::function<QString(const QPointF&)> figuresAt;
};

struct ScenePanel {
    QString number;   // large and pale in the middle
    QString figures;  // told to screen readers when the panel is picked
    int tint = -1;    // which of the tints, so that a panel has one on both sides; -1: by its place
    std::vector<SceneEdge> edges;
    QPainterPath sewing;   // closed
    QPainterPath cutting;  // closed; empty where no allowance is shown
    QPainterPath before;   // lines as they were, thin and pale under the others; may be empty
    std::vector<QLineF> notches;
    std::vector<QLineF> levels;   // only where levels do not run across the whole table
    std::optional<QLineF> grain;  // lower end, upper end
    QRectF numberRoom;            // free place for the number; null: no number
    QRectF labelRoom;             // free place for the label
    QStringList label;            // its lines, may be empty; stands beneath where no room is
    ScenePen pen;                 // of its sewing line and notches
};

// A level across all panels.
struct SceneLevel {
    QString name;
    QString figures;
    double yMm = 0;
    // Names in one column give way to each other; the next column stands to its right.
    int nameColumn = 0;
};

// A few letters with a choice of places, best first; left out where none of them is free of lines.
struct SceneLettering {
    QString text;
    std::vector<QPointF> places;
};

// A printed sheet on the big drawing: `frame` is what is printed of it.
struct SceneSheet {
    QString name;
    QRectF frame;
    QRectF nameRoom;  // free of lines; null where the name finds no place
};

// A sign of constant size at a place of the pattern, with a few words beside it.
struct SceneSign {
    enum class Shape { towards, apart, along, dot };  // arrows to each other, away, one; no arrow
    Shape shape = Shape::dot;
    QPointF atMm;
    QPointF direction{1, 0};  // unit length, y up: of the arrows
    QString words;            // right of the sign
    bool isPale = false;      // does not count now
    bool isLit = false;       // picked
};

// A place that can be dragged.
struct SceneHandle {
    QString id;
    QPointF atMm;
    QString words;  // what dragging it does, for the foot of the window
};

// Something that paints itself, in mm with y DOWN from the upper left corner of `place`.
struct SceneDrawing {
    QRectF place;
    std::function<void(QPainter&)> paint;
};

struct TableScene {
    std::vector<ScenePanel> panels;
    std::vector<SceneLevel> levels;
    std::vector<SceneLettering> letterings;
    std::vector<SceneSheet> sheets;
    std::vector<SceneDrawing> drawings;
    std::vector<SceneStroke> strokes;
    std::vector<SceneSign> signs;
    std::vector<SceneHandle> handles;
    std::vector<SceneLegendRow> legend;  // upper right, under the caption
    QRectF room;        // what fitting shows besides what has a size; null: nothing
    QString caption;    // quiet words in the upper right corner: "pencil"
    QString emptyText;  // in the middle, when nothing lies on the table
    LengthUnit unit = LengthUnit::centimetre;  // of the rulers
    QPointF rulerZero;                         // the place both rulers call 0
    bool isPencil = true;                      // graphite and thinner, or ink

    [[nodiscard]] bool isEmpty() const {
        return panels.empty() && sheets.empty() && drawings.empty();
    }
};

// Everything that has a size: panels with their cutting lines, sheets, drawings, strokes, and the
// scene's room. Null when empty.
[[nodiscard]] QRectF boundsOf(const TableScene& scene);

// What is under a pointer, or picked.
struct TablePlace {
    enum class Kind { nothing, edge, level, panel, sheet };
    Kind kind = Kind::nothing;
    int panel = -1;
    int edge = -1;
    int level = -1;
    int sheet = -1;
    bool operator==(const TablePlace&) const = default;
};

}  // namespace coutil
