#include "ui/benches/sheet_map.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "ui/canvas/table_colours.h"

namespace coutil {

namespace {

constexpr int kLargestHeightPx = 170;
constexpr int kFirstPageRowPx = 26;
constexpr double kGapPx = 2;

}  // namespace

SheetMap::SheetMap(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Sheet map"));
}

QSize SheetMap::sizeHint() const { return {300, heightForWidth(300)}; }

int SheetMap::heightForWidth(int width) const {
    if (!plan_ || plan_->columns == 0) return kFirstPageRowPx;
    const double high = static_cast<double>(plan_->stepYUm) * plan_->rows;
    const double wide = static_cast<double>(plan_->stepXUm) * plan_->columns;
    return kFirstPageRowPx + std::min(kLargestHeightPx, static_cast<int>(width * high / wide));
}

void SheetMap::setPlan(const std::optional<SheetPlan>& plan) {
    plan_ = plan;
    page_ = std::min(page_, pageCount() - 1);
    updateGeometry();
    update();
    setAccessibleDescription(
        plan_ ? tr("%n sheet(s)", nullptr, static_cast<int>(plan_->sheets.size())) : QString());
}

int SheetMap::pageCount() const { return plan_ ? pagesOf(*plan_) : 0; }

void SheetMap::setPage(int page) {
    if (page == page_) return;
    page_ = page;
    update();
}

QRectF SheetMap::cellOf(int page) const {
    if (!plan_ || page < 0 || page >= pageCount()) return {};
    const auto index = sheetOnPage(*plan_, page);
    if (!index) return QRectF(0, 0, width(), kFirstPageRowPx - 4);
    const double ratio = static_cast<double>(plan_->stepYUm) / static_cast<double>(plan_->stepXUm);
    const double cell =
        std::min(static_cast<double>(width()) / plan_->columns,
                 static_cast<double>(height() - kFirstPageRowPx) / plan_->rows / ratio);
    const Sheet& sheet = plan_->sheets[*index];
    return QRectF(sheet.column * cell, kFirstPageRowPx + sheet.row * cell * ratio, cell,
                  cell * ratio)
        .adjusted(0, 0, -kGapPx, -kGapPx);
}

void SheetMap::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const TableColours& colours = tableColours(isDark(palette()));
    QFont small(font());
    small.setPixelSize(10);
    painter.setFont(small);
    for (int page = 0; page < pageCount(); ++page) {
        const QRectF cell = cellOf(page);
        painter.fillRect(cell, page == page_ ? colours.halo : colours.ruler);
        painter.setPen(QPen(colours.sheet, 1));
        painter.drawRect(cell);
        painter.setPen(page == page_ ? colours.paper : colours.text);
        const auto index = sheetOnPage(*plan_, page);
        const QString name = index ? QString::fromStdString(nameOf(plan_->sheets[*index]))
                                   : tr("First page: map and test square");
        if (painter.fontMetrics().horizontalAdvance(name) < cell.width() && cell.height() > 10) {
            painter.drawText(cell, Qt::AlignCenter, name);
        }
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(colours.halo, 1));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

void SheetMap::choose(int page) {
    if (page < -1 || page >= pageCount() || page == page_) return;
    setPage(page);
    const auto index = page < 0 ? std::nullopt : sheetOnPage(*plan_, page);
    setAccessibleDescription(
        page < 0 ? tr("Whole drawing")
        : index  ? tr("Sheet %1").arg(QString::fromStdString(nameOf(plan_->sheets[*index])))
                 : tr("First page"));
    emit pageChosen(page);
}

void SheetMap::mouseReleaseEvent(QMouseEvent* event) {
    for (int page = 0; page < pageCount(); ++page) {
        if (cellOf(page).contains(event->position())) {
            choose(page == page_ ? -1 : page);
            return;
        }
    }
}

// The sheet nearest in the same row or column; the first page lies above them all.
int SheetMap::besides(int rows, int columns) const {
    const int next = page_ + (rows + columns > 0 ? 1 : -1);
    const auto index = page_ < 0 ? std::nullopt : sheetOnPage(*plan_, page_);
    if (!index) return next;
    const Sheet now = plan_->sheets[*index];
    for (int page = 0; page < pageCount(); ++page) {
        const auto other = sheetOnPage(*plan_, page);
        if (other && plan_->sheets[*other] == Sheet{now.row + rows, now.column + columns}) {
            return page;
        }
    }
    return next;
}

void SheetMap::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return choose(besides(0, -1));
        case Qt::Key_Right:
            return choose(besides(0, 1));
        case Qt::Key_Up:
            return choose(besides(-1, 0));
        case Qt::Key_Down:
            return choose(besides(1, 0));
        case Qt::Key_Home:
            return choose(0);
        case Qt::Key_End:
            return choose(pageCount() - 1);
        case Qt::Key_Escape:
            if (page_ >= 0) return choose(-1);
            break;
        default:
            break;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace coutil
