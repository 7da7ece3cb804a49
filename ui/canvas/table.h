#pragma once

#include <QPixmap>
#include <QString>
#include <QWidget>
#include <optional>

#include "ui/canvas/flat_scene.h"
#include "ui/canvas/scene_painter.h"
#include "ui/canvas/table_scene.h"
#include "ui/canvas/table_view.h"

class QNativeGestureEvent;

namespace coutil {

// The table under all benches. It shows one scene and tells what the pointer is on and what was
// picked; it knows no document. Wheel zooms about the pointer (swappable with panning), two
// fingers pan, pinch zooms, middle or space drag pans, F fits, + and - zoom, arrows pan while
// nothing is picked. Tab goes through the panels; with a panel picked up and down go through its
// edges, Esc lets go.
// Handles of the scene can be dragged; Esc gives a drag up. The table only tells where a handle is
// wanted: whoever made the scene makes another with the handle there.
class Table : public QWidget {
    Q_OBJECT

  public:
    explicit Table(QWidget* parent = nullptr);

    // Shows another scene. The view stays, unless it was fitted and the scene outgrew it, or
    // nothing was shown before, or another number of panels is laid out. What is picked stays
    // picked while it exists.
    void setScene(TableScene scene);
    [[nodiscard]] const TableScene& scene() const { return scene_; }
    // The last sound pattern, behind an error: everything pale.
    void setFaded(bool isFaded);

    void fit();
    void zoomBy(double factor);  // about the middle
    void centreOn(const QPointF& mm);
    void setView(const TableView& view);
    [[nodiscard]] const TableView& view() const { return view_; }
    [[nodiscard]] QRectF openArea() const;  // px inside the rulers
    void setWheelPans(bool wheelPans) { wheelPans_ = wheelPans; }

    [[nodiscard]] TablePlace placeAt(const QPointF& px) const;
    [[nodiscard]] const TablePlace& picked() const { return highlights_.picked; }
    [[nodiscard]] const TablePlace& pointed() const { return highlights_.pointed; }
    [[nodiscard]] QString plate() const { return highlights_.plate; }
    void pick(const TablePlace& place);
    void pickPanel(int panel);  // -1 lets go

    // The handle under a place of the screen, and the one being dragged; empty: none.
    [[nodiscard]] QString handleAt(const QPointF& px) const;
    [[nodiscard]] const QString& draggedHandle() const { return draggedHandle_; }

    // Lights the place of a problem; a panel of -1 and no point put the light out.
    void lightProblem(int panel, std::optional<QPointF> atMm);
    [[nodiscard]] std::optional<QPointF> litProblem() const { return highlights_.problemAtMm; }

    [[nodiscard]] QSize sizeHint() const override { return {900, 640}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {320, 240}; }

  signals:
    void pointedAt(const coutil::TablePlace& place);
    void pickedChanged(const coutil::TablePlace& place);
    void clicked(const coutil::TablePlace& place);  // with the left button, without a drag
    void clickedAt(const coutil::TablePlace& place, const QPointF& mm);  // the same click, where
    void handleDragged(const QString& id, const QPointF& mm);            // at every move
    void handleReleased(const QString& id);
    void handleGivenUp(const QString& id);            // Esc: as if it had never been touched
    void letGo();                                     // Esc with nothing picked
    void activated(const coutil::TablePlace& place);  // double click, or Enter on what is picked
    void pointerAt(std::optional<QPointF> mm);        // nothing when it left
    void viewChanged();
    void resized();
    void hint(const QString& text);

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

  private:
    [[nodiscard]] QRectF fittingArea() const;
    [[nodiscard]] TableLook look() const;
    [[nodiscard]] QString figuresOf(const TablePlace& place) const;
    [[nodiscard]] QString platedFigures() const;  // of what is pointed at, at the pointer
    bool takeHandle(const QPointF& px);
    void dragHandle(const QPointF& px);
    void dropHandle(bool isGivenUp);
    void pointToHandle(const QPointF& px);
    [[nodiscard]] bool stillThere(const TablePlace& place) const;
    void changeView(const TableView& view, bool isFitted);
    void redrawLayer();
    void pointTo(const QPointF& px);
    void stopPanning();
    bool panByKey(int key, Qt::KeyboardModifiers modifiers);
    bool stepPicked(int key);
    bool pinch(QNativeGestureEvent* event);
    void tellAssistance();

    TableScene scene_;
    FlatScene flat_;
    TableView view_;
    QPixmap layer_;
    TableHighlights highlights_;
    bool isLayerCurrent_ = false;
    bool isFitted_ = true;
    bool isFaded_ = false;
    bool wheelPans_ = false;
    bool isSpaceHeld_ = false;
    bool isPanning_ = false;
    bool wasDragged_ = false;
    QString draggedHandle_;
    QPointF heldOffPx_;  // from the pointer to the handle's middle
    QPointF pressedPx_;
    QPointF lastPx_;
};

}  // namespace coutil
