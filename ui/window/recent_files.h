#pragma once

#include <QStringList>

namespace coutil {

inline constexpr int kRecentFileCount = 10;

// The folios opened or saved last, newest first, at most kRecentFileCount, as absolute paths; those
// that are missing now stay in the list (a stick may come back). Kept in the settings.
[[nodiscard]] QStringList recentFiles();
void addRecentFile(const QString& file);
void clearRecentFiles();

}  // namespace coutil
