#pragma once

#include <QDate>
#include <QString>
#include <optional>
#include <vector>

#include "core/comparison/alterations_between.h"
#include "core/sheets/sheet_drawing.h"
#include "core/units/length.h"

namespace coutil {

class FolioDocument;

enum class PaperKind { measuring, fitting, change };
[[nodiscard]] QString paperName(PaperKind kind);  // "Measuring sheet"

// What is chosen for a paper before it is printed.
struct PaperChoices {
    PaperKind kind = PaperKind::measuring;
    Paper paper{"A4", 210000, 297000};
    LengthUnit unit = LengthUnit::centimetre;
    bool withClient = true;
    QDate printedOn{};
    QDate returnBy{};  // fitting sheet; invalid: none
    StateRef older{};  // change sheet: what the paper master shows
};

// Every other revision and pencil of the garment on the table, the parent of what is shown first,
// in words; what a change sheet can start from.
struct OlderState {
    StateRef state;
    QString name;
};
[[nodiscard]] std::vector<OlderState> olderStates(const FolioDocument& document);

// The pages of a paper of what is on the table. Problems: pencilMissing where there is no garment
// or no pattern (the measuring sheet needs neither), those of the older state's draft,
// nothingChanged, those of planSheets().
[[nodiscard]] Outcome<std::vector<SheetDrawing>> documentPaper(const FolioDocument& document,
                                                               const PaperChoices& choices);

}  // namespace coutil
