#pragma once

#include <QPixmap>
#include <QWidget>
#include <string>
#include <vector>

#include "core/revision/folio.h"

class QLabel;

namespace coutil {

// A photo large over the table, with the spots its marks were read from. A click on it ties the
// picked mark to the place; Esc, or a click beside it, closes it.
class FitPhotoView : public QWidget {
    Q_OBJECT

  public:
    explicit FitPhotoView(QWidget* over);  // covers this widget, and follows its size

    void showPhoto(const Photo& photo);
    void closePhoto();
    [[nodiscard]] const std::string& photo() const { return photo_; }  // id; empty: closed
    // The spots of all marks on this photo; `hint` says what a click does.
    void showSpots(const std::vector<Mark>& marks, const std::string& picked, const QString& hint);
    [[nodiscard]] QRectF pictureArea() const;  // px

  signals:
    void spotChosen(const coutil::PhotoSpot& spot);
    void removeWanted(const std::string& photo);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    std::string photo_;
    QPixmap picture_;
    std::vector<Mark> marks_;
    std::string picked_;
    QLabel* hint_;
    QWidget* bar_;
};

}  // namespace coutil
