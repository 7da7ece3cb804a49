#pragma once

#include <QWidget>

#include "core/alterations/mark.h"
#include "core/pattern/pattern.h"
#include "core/units/length.h"

class QFormLayout;
class QLabel;
class QPushButton;

namespace coutil {

class ChoiceField;
class FitPlaceFields;
class LengthField;
class TextField;

// One mark as fields: what, where, how much, which side, a note. Enter goes on to the next.
class FitMarkEditor : public QWidget {
    Q_OBJECT

  public:
    explicit FitMarkEditor(QWidget* parent = nullptr);

    // A mark that is not recorded yet, or a recorded one to be changed.
    void showMark(const Mark& mark, bool isNew, const Pattern& pattern, LengthUnit unit);
    [[nodiscard]] const Mark& mark() const { return mark_; }
    void startTyping();  // the amount, or the note where there is none
    void startPlace();   // the place of the next mark

  signals:
    void edited(const coutil::Mark& after, const QString& field);
    void accepted();  // Enter, or the button
    void left();

  private:
    void layOut();
    void connectFields();
    void take(const Mark& after, const QString& field);
    void takeAmount(std::optional<double> mm);

    Mark mark_;
    MarkKind enteredKind_ = MarkKind::pinned;
    bool isTyping_ = false;  // in the amount: it is not written over meanwhile
    QLabel* heading_;
    QFormLayout* form_;
    ChoiceField* kind_;
    FitPlaceFields* place_;
    LengthField* amount_;
    ChoiceField* side_;
    TextField* note_;
    QLabel* complaint_;
    QPushButton* next_;
};

}  // namespace coutil
