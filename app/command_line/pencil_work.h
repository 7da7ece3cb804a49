#pragma once

#include <functional>
#include <string>

#include "app/command_line/call.h"
#include "app/command_line/id_source.h"
#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// A folio being changed by a call: the garment it is about, and where its ids come from.
struct PencilWork {
    Folio folio;
    std::size_t garmentIndex = 0;
    std::string pencil;  // id of the one that takes the changes
    std::string date;    // of what is begun today
    IdSource ids;

    [[nodiscard]] Garment& garment() { return folio.garments[garmentIndex]; }
    [[nodiscard]] Pencil& changed();
};

// Opens the call's folio to change a pencil. `text` (the file with the changes) belongs to what
// repeatable ids follow from. `revision` is what the changes were meant for, as --revision has it:
// a pencil takes them itself; over a confirmed revision they go to the newest pencil that began
// from it, or one is begun. --pencil NAME takes the pencil of that name, or gives a begun one that
// name. Problems as openGarment().
[[nodiscard]] Outcome<PencilWork> beginPencilWork(const Call& call, const std::string& text,
                                                  const std::string& revision);

// What was changed is drafted. Problems: every error that was not there `before`, so that a change
// that does not fit is told and not kept; without any, the folio is written. `before` are the
// problems of the pencil without the change.
[[nodiscard]] std::vector<Problem> writePencilWork(PencilWork& work, const Call& call,
                                                   const std::vector<Problem>& before);

// Problems of the pencil as it is.
[[nodiscard]] std::vector<Problem> problemsNow(PencilWork& work);

}  // namespace coutil
