#pragma once

#include <QList>
#include <QWidget>
#include <string>
#include <vector>

#include "core/revision/folio.h"
#include "ui/fields/choice_field.h"

class QLabel;
class QPushButton;

namespace coutil {

class DateField;
class TextField;

// Which fitting, and what is said of it as a whole. Shows values and tells wishes; the bench
// changes the folio.
class FitHead : public QWidget {
    Q_OBJECT

  public:
    explicit FitHead(QWidget* parent = nullptr);

    // `isDrawn`: what is on the table is what was tried, or a pencil begun from it.
    void showFitting(const Folio& folio, const Garment& garment, const Fitting& fitting,
                     bool isDrawn);

  signals:
    void chosen(const std::string& fitting);
    void newWanted();
    void removeWanted();
    void sheetWanted();
    void triedWanted();  // to see what was tried on the table
    void edited(const coutil::Fitting& after, const QString& words, const QString& key);
    void left();  // done with a field

  private:
    void layOut();
    void fillFittings(const Garment& garment);
    void fillTried(const Folio& folio, const Garment& garment);
    void edit(const Fitting& after, const QString& words, const QString& field);

    struct Tried {
        std::string revision;  // digest
        std::string pencil;
    };
    Fitting fitting_;
    std::vector<std::string> ids_;
    std::vector<Tried> tried_;
    ChoiceField* fittings_;
    QPushButton* remove_;
    ChoiceField* how_;
    DateField* heldOn_;
    ChoiceField* triedChoice_;
    TextField* readBy_;
    TextField* note_;
    QWidget* elsewhere_;  // shown where the fitting is not drawn on the table
};

}  // namespace coutil
