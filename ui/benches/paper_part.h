#pragma once

#include <QWidget>

#include "core/sheets/sheet_plan.h"
#include "core/units/length.h"

class QCheckBox;
class QFormLayout;
class QLabel;

namespace coutil {

class ChoiceField;
class LengthField;

// Paper, orientation, margin, overlap, and whether both of a mirrored pair are printed. Holds the
// last sound options; what is not sound is told and changes nothing.
class PaperPart : public QWidget {
    Q_OBJECT

  public:
    explicit PaperPart(QWidget* parent = nullptr);

    void showOptions(const SheetOptions& options, LengthUnit unit);
    [[nodiscard]] const SheetOptions& options() const { return options_; }

  signals:
    void edited(const coutil::SheetOptions& options);

  private:
    void addLength(QFormLayout& form, LengthField& field, const QString& words);
    void choosePaper(int index);
    void takeOwnSize();
    void offer(const SheetOptions& options);

    SheetOptions options_;
    LengthUnit unit_ = LengthUnit::centimetre;
    ChoiceField* paper_;
    QWidget* ownSize_;
    LengthField* ownWidth_;
    LengthField* ownHeight_;
    ChoiceField* orientation_;
    LengthField* margin_;
    LengthField* overlap_;
    QCheckBox* mirrored_;
    QLabel* complaint_;
};

}  // namespace coutil
