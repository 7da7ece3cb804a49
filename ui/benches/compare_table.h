#pragma once

#include <QTreeWidget>

#include "ui/comparing/compared_figures.h"

namespace coutil {

// One table of figures in the card, as high as its rows. Going to a row, by pointer or keys, lights
// its place; a click or Enter goes there.
class CompareTable : public QTreeWidget {
    Q_OBJECT

  public:
    explicit CompareTable(QWidget* parent = nullptr);
    void showFigures(const FigureTable& table);

  signals:
    void pointed(const coutil::ComparedPlace& place);
    void chosen(const coutil::ComparedPlace& place);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

  private:
    [[nodiscard]] ComparedPlace placeOf(const QTreeWidgetItem* item) const;
    void fitHeight();

    std::vector<FigureRow> rows_;
};

}  // namespace coutil
