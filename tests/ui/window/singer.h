#pragma once

#include "ui/window/demo_singer.h"

namespace coutil {

// The demo singer's folio, for tests that want a body which drafts. Ends the test program when the
// program's own demo does not read.
inline Folio singersFolio() { return demoSinger().value.value(); }

}  // namespace coutil
