#pragma once

#include <QString>
#include <vector>

#include "core/alterations/mark.h"

namespace coutil {

// What can be marked, as a choice: a kind together with the place it has.
struct MarkForm {
    QString words;
    MarkKind kind = MarkKind::pinned;
    MarkPlace place;  // empty of its kind
};
[[nodiscard]] const std::vector<MarkForm>& markForms();

// The index of the form a mark has.
[[nodiscard]] int formOf(const Mark& mark);

// The mark in another form; what is known of its place stays where both forms have it.
[[nodiscard]] Mark inForm(const Mark& mark, int form);

// True where a mark says all it has to: a place, and an amount unless it is a note.
[[nodiscard]] bool isComplete(const Mark& mark);

// The kind of a pair that figures without a sign are read as: pinned of pinned and opened.
[[nodiscard]] MarkKind unsignedKind(MarkKind kind);

// A length read for a mark that stood as `entered`: below zero it says the opposite, pinned or
// opened, raised or lowered, longer or shorter.
[[nodiscard]] Mark withAmount(const Mark& mark, MarkKind entered, double mm);

}  // namespace coutil
