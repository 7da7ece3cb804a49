#pragma once

#include <string>
#include <string_view>

namespace coutil {

// A random UUID (RFC 9562 version 4), lower case.
[[nodiscard]] std::string newUuid();

// The UUID that belongs to a text: the same for the same text on any machine (RFC 9562 version 5,
// SHA-1, in a name space of this program). Used where a run must be repeatable to the byte, and as
// the seal that tells a damaged folio from a sound one.
[[nodiscard]] std::string derivedUuid(std::string_view text);

}  // namespace coutil
