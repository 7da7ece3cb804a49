#include "ui/benches/compare_table.h"

#include <QHeaderView>
#include <QScrollBar>
#include <QWheelEvent>

namespace coutil {

namespace {
constexpr double kFigureScale = 0.92;
constexpr int kNarrowestColumnPx = 24;
}  // namespace

CompareTable::CompareTable(QWidget* parent) : QTreeWidget(parent) {
    setRootIsDecorated(false);
    setFrameShape(QFrame::NoFrame);
    setUniformRowHeights(true);
    setAllColumnsShowFocus(true);
    setMouseTracking(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * kFigureScale);
    setFont(small);
    header()->setFont(small);
    header()->setMinimumSectionSize(kNarrowestColumnPx);
    header()->setStretchLastSection(false);
    header()->setSectionsClickable(false);
    const auto point = [this](QTreeWidgetItem* item) { emit pointed(placeOf(item)); };
    const auto choose = [this](QTreeWidgetItem* item) { emit chosen(placeOf(item)); };
    connect(this, &QTreeWidget::itemEntered, this, point);
    connect(this, &QTreeWidget::currentItemChanged, this, point);
    connect(this, &QTreeWidget::itemClicked, this, choose);
    connect(this, &QTreeWidget::itemActivated, this, choose);
}

ComparedPlace CompareTable::placeOf(const QTreeWidgetItem* item) const {
    const int row = item == nullptr ? -1 : indexOfTopLevelItem(const_cast<QTreeWidgetItem*>(item));
    return row < 0 ? ComparedPlace{} : rows_[static_cast<std::size_t>(row)].place;
}

void CompareTable::showFigures(const FigureTable& table) {
    const QSignalBlocker quiet(this);
    clear();
    rows_ = table.rows;
    setColumnCount(static_cast<int>(table.columns.size()));
    setHeaderLabels(table.columns);
    setAccessibleName(table.title);
    for (int column = 1; column < columnCount(); ++column) {
        headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    for (const FigureRow& row : table.rows) {
        auto* item = new QTreeWidgetItem(this, QStringList(row.name) + row.figures);
        for (int column = 0; column < columnCount(); ++column) {
            if (column > 0) item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
            if (row.isUnchanged) {
                item->setForeground(column, palette().brush(QPalette::PlaceholderText));
            }
        }
    }
    header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    fitHeight();
}

// A table wider than the card scrolls; its bar has a line of its own.
void CompareTable::fitHeight() {
    const int row = topLevelItemCount() > 0 ? visualItemRect(topLevelItem(0)).height() : 0;
    int wide = sizeHintForColumn(0);
    for (int column = 1; column < columnCount(); ++column) wide += columnWidth(column);
    const bool scrolls = wide > viewport()->width();
    header()->setSectionResizeMode(0,
                                   scrolls ? QHeaderView::ResizeToContents : QHeaderView::Stretch);
    setFixedHeight(header()->sizeHint().height() + row * topLevelItemCount() + 4 +
                   (scrolls ? horizontalScrollBar()->sizeHint().height() : 0));
}

void CompareTable::resizeEvent(QResizeEvent* event) {
    QTreeWidget::resizeEvent(event);
    fitHeight();
}

void CompareTable::leaveEvent(QEvent* event) {
    QTreeWidget::leaveEvent(event);
    emit pointed({});
}

// The card scrolls, not a table in it.
void CompareTable::wheelEvent(QWheelEvent* event) { event->ignore(); }

}  // namespace coutil
