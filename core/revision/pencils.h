#pragma once

#include <cstddef>
#include <string>

#include "core/revision/folio.h"

namespace coutil {

// A pencil about to begin. The id is a new UUID; the name may be empty.
struct NewPencil {
    std::string id;
    std::string startedOn;  // ISO 8601 date
    std::string name{};
};

// A pencil from a confirmed revision, of this or of another garment, in the garment at an index:
// nothing after that revision is lost, the timeline branches. Problem revisionUnknown (subject: the
// digest).
[[nodiscard]] Outcome<Folio> pencilBegun(const Folio& folio, std::size_t garment,
                                         const std::string& revision, const NewPencil& pencil);

// A second pencil beside one, beginning as its copy ("two ways to solve the same fitting").
// Problem pencilMissing (subject: the garment).
[[nodiscard]] Outcome<Folio> pencilCopied(const Folio& folio, std::size_t garment,
                                          const std::string& pencil, const NewPencil& copy);

// A new garment that begins with a pencil from a revision of another. Problems garmentTaken
// (subject: the name), revisionUnknown.
[[nodiscard]] Outcome<Folio> garmentBegun(const Folio& folio, const Garment& emptyGarment,
                                          const std::string& revision, const NewPencil& pencil);

// Takes a pencil away; revisions and fittings stay. Problem pencilMissing (subject: the garment).
[[nodiscard]] Outcome<Folio> pencilRubbedOut(const Folio& folio, std::size_t garment,
                                             const std::string& pencil);

}  // namespace coutil
