#pragma once

#include <QWidget>

class QActionGroup;
class QLabel;
class QLineEdit;
class QMenu;
class QPushButton;

namespace coutil {

class FolioDocument;

// "client · garment" in the top line. The garment's name opens the list of garments, with a new one
// and renaming; a name is written in place.
class GarmentLine : public QWidget {
    Q_OBJECT

  public:
    explicit GarmentLine(FolioDocument& document, QWidget* parent = nullptr);

    void addGarment();   // a new garment in the style of the present one; its name is asked for
    void startRename();  // the name becomes a line to write in; Enter takes it, Esc leaves it

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void showNames();
    void fillMenu();
    void takeName();
    void stopRename();

    FolioDocument& document_;
    QLabel* client_;
    QPushButton* button_;
    QMenu* menu_;
    QActionGroup* group_;
    QLineEdit* name_;
};

}  // namespace coutil
