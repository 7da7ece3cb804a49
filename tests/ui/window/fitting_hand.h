#pragma once

#include <QPoint>
#include <QString>
#include <string>

#include "core/alterations/mark.h"
#include "core/revision/folio.h"
#include "ui/window/main_window.h"

class QDate;

namespace coutil {

// A maker at the Fit bench of the real window: points at seams on the table, types into the
// fields. Throws where the window has no such field or place.
class FittingHand {
  public:
    explicit FittingHand(MainWindow& window) : window_(window) {}

    // The first fitting of the garment, or another one.
    void recordFitting();
    // How it was fitted, on which day, who read it.
    void head(FittingKind how, const QDate& on, const QString& by);

    // Points at a seam on the table and types what the tape says, in the window's unit (below zero:
    // opened). On the panel in front of that side, where left and right have panels of their own.
    void pinAt(const std::string& seam, double positionMm, const QString& amount,
               PanelSide side = PanelSide::both);
    // Chooses the kind of mark by the words of the choice.
    void kind(const QString& words);
    void choose(const char* field, const QString& words);
    void typeInto(const char* field, const QString& text);
    void side(BodySide side);
    void next();  // Enter in the amount

    [[nodiscard]] const Fitting& fitting() const;  // the latest
    [[nodiscard]] const Mark& lastMark() const { return fitting().marks.back(); }
    // Where a seam position lies on the table.
    [[nodiscard]] QPoint onTable(const std::string& seam, double positionMm, PanelSide side) const;

  private:
    template <class Widget>
    [[nodiscard]] Widget& field(const char* name) const;

    MainWindow& window_;
};

}  // namespace coutil
