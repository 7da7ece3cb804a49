#pragma once

#include <QWidget>
#include <optional>

#include "core/sheets/sheet_plan.h"

namespace coutil {

// The small picture of which sheet goes where. Page 0 is the first page with the test square, page
// i + 1 the plan's sheet i; -1 is the whole drawing. Click or arrow keys open a page.
class SheetMap : public QWidget {
    Q_OBJECT

  public:
    explicit SheetMap(QWidget* parent = nullptr);

    void setPlan(const std::optional<SheetPlan>& plan);
    void setPage(int page);
    [[nodiscard]] int page() const { return page_; }
    [[nodiscard]] int pageCount() const;
    [[nodiscard]] QRectF cellOf(int page) const;  // px

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  signals:
    void pageChosen(int page);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] int besides(int rows, int columns) const;
    void choose(int page);

    std::optional<SheetPlan> plan_;
    int page_ = -1;
};

}  // namespace coutil
