#pragma once

#include <QList>
#include <QWidget>

class QHBoxLayout;
class QMenuBar;

namespace coutil {

class BenchButton;
class ChoiceField;
class FolioDocument;
class GarmentLine;

// The one line at the top: menus, client and garment, the benches in the order of the job, and the
// maker's unit. Only the menus show while no folio is open.
class JobLine : public QWidget {
    Q_OBJECT

  public:
    JobLine(FolioDocument& document, QMenuBar* menus, QWidget* parent = nullptr);

    void addBench(const QString& name, int number);  // number: 1, 2, ... also its key
    void showBench(int index);
    [[nodiscard]] GarmentLine& garments();

  signals:
    void benchChosen(int index);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void showDocument();
    void takeUnit(int unit);

    FolioDocument& document_;
    GarmentLine* garments_;
    QWidget* benchRow_;
    QHBoxLayout* benchLayout_;
    QList<BenchButton*> benches_;
    ChoiceField* unit_;
};

}  // namespace coutil
