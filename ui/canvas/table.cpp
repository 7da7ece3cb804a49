#include "ui/canvas/table.h"

#include <QAccessible>
#include <QEvent>
#include <QPainter>
#include <QResizeEvent>
#include <algorithm>
#include <utility>

#include "ui/canvas/ruler.h"
#include "ui/canvas/table_colours.h"

namespace coutil {

namespace {
constexpr double kFitMarginPx = 28;
}

Table::Table(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAutoFillBackground(false);
    tellAssistance();
}

void Table::setScene(TableScene scene) {
    const bool wasEmpty = scene_.isEmpty();
    // A half become a whole pattern or back: the old view shows the wrong place of it.
    const bool isLaidOutAnew = !scene_.panels.empty() && !scene.panels.empty() &&
                               scene_.panels.size() != scene.panels.size();
    scene_ = std::move(scene);
    flat_ = flattenedScene(scene_);
    if (!stillThere(highlights_.picked)) {
        highlights_.picked = {};
        emit pickedChanged(highlights_.picked);
    }
    if (!stillThere(highlights_.pointed)) highlights_.pointed = {};
    highlights_.plate = platedFigures();
    highlights_.problemAtMm.reset();
    highlights_.problemPanel = -1;
    redrawLayer();
    const bool outgrew =
        isFitted_ && !openArea().contains(view_.toPx(boundsOf(scene_)).adjusted(1, 1, -1, -1));
    if (wasEmpty || outgrew || isLaidOutAnew) fit();
    tellAssistance();
}

void Table::setFaded(bool isFaded) {
    if (isFaded_ == isFaded) return;
    isFaded_ = isFaded;
    redrawLayer();
}

QRectF Table::openArea() const { return QRectF(rect()).adjusted(kSideRulerPx, kTopRulerPx, 0, 0); }

QRectF Table::fittingArea() const {
    QRectF area = openArea().adjusted(kFitMarginPx, kFitMarginPx, -kFitMarginPx, -kFitMarginPx);
    area.setLeft(std::max(area.left(), kSideRulerPx + levelMarginPx(scene_, font()) + 8));
    area.setTop(std::max(area.top(), kTopRulerPx + legendHeightPx(scene_, font()) + 12));
    return area;
}

void Table::fit() {
    const QRectF box = boundsOf(scene_);
    if (box.isEmpty() || fittingArea().isEmpty()) {
        changeView(TableView(1, openArea().center()), true);
        return;
    }
    changeView(TableView::fitting(box, fittingArea()), true);
}

void Table::zoomBy(double factor) {
    changeView(view_.zoomedAbout(openArea().center(), factor), false);
}

void Table::centreOn(const QPointF& mm) { changeView(view_.centredOn(mm, openArea()), false); }

void Table::setView(const TableView& view) { changeView(view, false); }

void Table::changeView(const TableView& view, bool isFitted) {
    isFitted_ = isFitted;
    if (view == view_) return;
    view_ = view;
    redrawLayer();
    emit viewChanged();
}

void Table::redrawLayer() {
    isLayerCurrent_ = false;
    update();
}

TableLook Table::look() const {
    return {scene_, flat_, view_, tableColours(isDark(palette())), QRectF(rect()), font()};
}

void Table::paintEvent(QPaintEvent*) {
    const double ratio = devicePixelRatioF();
    const QSize needed = (QSizeF(size()) * ratio).toSize();
    if (layer_.size() != needed || layer_.devicePixelRatio() != ratio) {
        layer_ = QPixmap(needed);
        layer_.setDevicePixelRatio(ratio);
        isLayerCurrent_ = false;
    }
    if (!isLayerCurrent_) {
        QPainter layer(&layer_);
        paintScene(layer, look());
        if (isFaded_) {
            QColor veil(tableColours(isDark(palette())).paper);
            veil.setAlpha(150);
            layer.fillRect(openArea(), veil);
        }
        isLayerCurrent_ = true;
    }
    QPainter painter(this);
    painter.drawPixmap(0, 0, layer_);
    paintHighlights(painter, look(), highlights_);
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(tableColours(isDark(palette())).halo, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void Table::resizeEvent(QResizeEvent*) {
    if (isFitted_) fit();
    redrawLayer();
    emit resized();
}

void Table::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::StyleChange) {
        redrawLayer();
    }
    QWidget::changeEvent(event);
}

void Table::tellAssistance() {
    QString name = tr("Table");
    QString description = scene_.isEmpty()
                              ? scene_.emptyText
                              : tr("%n panel(s) on the table", nullptr, int(scene_.panels.size()));
    const TablePlace& picked = highlights_.picked;
    if (picked.panel >= 0) {
        const ScenePanel& panel = scene_.panels[static_cast<std::size_t>(picked.panel)];
        name = tr("Table, panel %1").arg(panel.number);
        description = panel.figures;
        if (picked.kind == TablePlace::Kind::edge) description = figuresOf(picked);
    } else if (picked.kind == TablePlace::Kind::sheet) {
        name =
            tr("Table, sheet %1").arg(scene_.sheets[static_cast<std::size_t>(picked.sheet)].name);
    }
    if (name != accessibleName()) {
        setAccessibleName(name);
        QAccessibleEvent changed(this, QAccessible::NameChanged);
        QAccessible::updateAccessibility(&changed);
    }
    if (description != accessibleDescription()) {
        setAccessibleDescription(description);
        QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
        QAccessible::updateAccessibility(&changed);
    }
}

}  // namespace coutil
