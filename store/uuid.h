#pragma once

#include <string>

namespace coutil {

// A random UUID (RFC 9562 version 4), lower case.
[[nodiscard]] std::string newUuid();

}  // namespace coutil
