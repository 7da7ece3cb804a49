#pragma once

#include <QSettings>
#include <memory>

namespace coutil {

// The program's own settings (window, theme, recent files, unit): an ini file in the user's
// configuration folder. Never holds anything of a client but the places of her folios.
[[nodiscard]] std::unique_ptr<QSettings> openSettings();

}  // namespace coutil
