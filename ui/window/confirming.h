#pragma once

#include <QObject>

#include "core/problems/problem.h"

class QWidget;

namespace coutil {

class FolioDocument;
class FolioFiles;
struct ConfirmOffer;

// Goes over the pencil on the table in ink: asks, confirms, saves the folio as a whole at once.
// What can't be saved stays confirmed in the open folio and its working copy, and is said.
class Confirming : public QObject {
    Q_OBJECT

  public:
    Confirming(FolioDocument& document, FolioFiles& files, QWidget* window);

    void confirmPencil();

  signals:
    void failed(const coutil::Problem& problem);
    void told(const QString& text);
    void notSaved(const QString& text);  // confirmed all the same

  private:
    [[nodiscard]] ConfirmOffer offer() const;

    FolioDocument& document_;
    FolioFiles& files_;
    QWidget* window_;
};

}  // namespace coutil
