#pragma once

#include <QString>
#include <vector>

#include "core/store/working_copy.h"

namespace coutil {

// Work that an earlier window left unsaved, newest first: all of it, or only what the maker has not
// yet said "leave" to. Work left for more than kKeepLeftDays is dropped by expireLeftWork().
inline constexpr int kKeepLeftDays = 30;
[[nodiscard]] std::vector<Recoverable> unsavedWork();
[[nodiscard]] std::vector<Recoverable> offeredWork();

// The maker leaves it where it is: not offered again, but still in the File menu.
void leaveWork(const Recoverable& found);
void expireLeftWork();

// "Leonore, soprano, 2 March 2026 14:05": the client, the time of the last change, and the folio's
// name if it has one.
[[nodiscard]] QString workName(const Recoverable& found);

}  // namespace coutil
