#pragma once

#include <QPainterPath>
#include <QWidget>

namespace coutil {

// The foot of the start screen: the demo singer's own panels, drafted by the program, in thin pale
// lines. A decoration: it can't be pressed and says nothing that is not said in words.
class StartDrawing : public QWidget {
    Q_OBJECT

  public:
    explicit StartDrawing(QWidget* parent = nullptr);

    [[nodiscard]] bool isEmpty() const { return panels_.isEmpty(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QPainterPath panels_;  // mm, y up
    QPainterPath levels_;
};

}  // namespace coutil
