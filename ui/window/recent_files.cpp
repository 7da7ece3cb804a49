#include "ui/window/recent_files.h"

#include <QFileInfo>

#include "ui/window/settings.h"

namespace coutil {

namespace {
constexpr char kRecentKey[] = "files/recent";
}  // namespace

QStringList recentFiles() { return openSettings()->value(kRecentKey).toStringList(); }

void addRecentFile(const QString& file) {
    const QFileInfo info(file);
    const QString canonical = info.canonicalFilePath();
    const QString path = canonical.isEmpty() ? info.absoluteFilePath() : canonical;
    QStringList files = recentFiles();
    files.removeAll(path);
    files.prepend(path);
    openSettings()->setValue(kRecentKey, QStringList(files.mid(0, kRecentFileCount)));
}

void clearRecentFiles() { openSettings()->remove(kRecentKey); }

}  // namespace coutil
