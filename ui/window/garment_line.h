#pragma once

#include <QString>
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

    // The same whatever the names are: what stands beside this line keeps its place. Names that are
    // too long for the room end in an ellipsis.
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void showNames();
    void fitNames();
    void fillMenu();
    void takeName();
    void stopRename();

    FolioDocument& document_;
    QString clientName_;
    QString garmentName_;
    QLabel* client_;
    QLabel* dot_;
    QPushButton* button_;
    QMenu* menu_;
    QActionGroup* group_;
    QLineEdit* name_;
};

}  // namespace coutil
