#pragma once

#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "core/revision/folio.h"

class QGridLayout;
class QToolButton;

namespace coutil {

// The photos of a fitting as small pictures; more are attached from files or dropped here.
class FitPhotoPart : public QWidget {
    Q_OBJECT

  public:
    explicit FitPhotoPart(QWidget* parent = nullptr);
    void showPhotos(const Folio& folio, const std::vector<std::string>& ids);

  signals:
    void filesWanted();                           // ask the maker for files
    void filesDropped(const QStringList& files);  // pictures
    void shown(const std::string& photo);         // wanted large

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    QGridLayout* grid_;
    std::vector<std::string> ids_;
    std::vector<QToolButton*> buttons_;
};

}  // namespace coutil
