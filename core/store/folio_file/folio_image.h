#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"

namespace coutil {

// The bytes of a folio file. The same folio always gives the same bytes. Problems: fileUnwritable
// (the subject is `file`) when the folio can't be held by a file, such as two records with one id.
[[nodiscard]] Outcome<std::string> folioImage(const Folio& folio,
                                              const std::filesystem::path& file);

// The folio in such bytes, checked in all respects; problems as readFolio, with `file` as subject.
[[nodiscard]] Outcome<Folio> folioFromImage(std::string_view bytes,
                                            const std::filesystem::path& file);

// A revision that a file holds.
struct HeldRevision {
    std::string digest;
    int number = 0;
    std::string garment;  // its name
};

// The revisions in such bytes by garment and number, whatever else is wrong with them and whatever
// version wrote them; none where there is no table of them that can be read.
[[nodiscard]] std::vector<HeldRevision> revisionsHeldIn(std::string_view bytes);

}  // namespace coutil
