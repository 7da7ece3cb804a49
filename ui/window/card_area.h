#pragma once

#include <QStackedWidget>

namespace coutil {

class Bench;

// The card at the right of the table: the bench the maker works at, scrolling inside.
class CardArea : public QStackedWidget {
    Q_OBJECT

  public:
    explicit CardArea(QWidget* parent = nullptr);

    void addBench(Bench* bench);
    void showBench(int index);

    bool eventFilter(QObject* watched, QEvent* event) override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void fitWidth();
};

}  // namespace coutil
