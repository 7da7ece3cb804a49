#pragma once

#include <functional>

#include "ui/window/main_window.h"

namespace coutil {

// The Fit bench with the demo singer's fittings: the first while it is typed, then left and right
// with a slit, a branch on the timeline. `take` writes a picture of the window under a name. The
// window was made with `answers`; folios go into `folder`.
void takeFitting(MainWindow& window, QueuedAnswers& answers, const QString& folder,
                 const std::function<void(const char* name)>& take);

}  // namespace coutil
