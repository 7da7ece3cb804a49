#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>

#include "core/revision/folio.h"

namespace coutil {

// What the maker says when she goes over a pencil in ink.
struct Confirmation {
    std::string on;  // ISO 8601 date
    std::string by;
    std::string note;
    std::string reason{};  // why she confirms although errors stand; empty: she doesn't
};

// What a pencil came to when it was drafted.
struct DraftedPencil {
    std::optional<Pattern> pattern;
    std::vector<Problem> problems;
};

// The recipe as the store writes it.
using WriteRecipe = std::function<std::string(const Recipe&)>;

// Goes over a pencil in ink: the folio with a revision more (its number the highest of the garment
// and one, its parent the pencil's) and that pencil gone; other pencils and fittings stay as they
// are.
//
// Problems, then nothing is confirmed: pencilMissing (subject: the garment), dateUnreadable
// (subject: "date", detail: as typed), confirmRefused (subject: the garment) followed by the errors
// that stand, where there is no reason; also with one where there is no pattern or ink can't hold
// it. Problems of recipeOf(). With a reason `errorsAccepted` is the reason and under it a line an
// error (acceptedErrorLine).
[[nodiscard]] Outcome<Folio> pencilConfirmed(const Folio& folio, std::size_t garment,
                                             const std::string& pencil,
                                             const DraftedPencil& drafted,
                                             const Confirmation& confirmation,
                                             const WriteRecipe& writeRecipe);

// How an accepted error is kept: its key, and subject and panel where it has them.
[[nodiscard]] std::string acceptedErrorLine(const Problem& error);

}  // namespace coutil
