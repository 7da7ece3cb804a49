#include "ui/document/state_folder.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace coutil {

std::filesystem::path stateFolder() {
    if (QStandardPaths::isTestModeEnabled()) {
        return pathOf(QDir::homePath() + QStringLiteral("/.qttest/state/coutil"));
    }
    // QStandardPaths knows the state folder only from Qt 6.7 on.
    QString top = qEnvironmentVariable("XDG_STATE_HOME");
    if (!QDir::isAbsolutePath(top)) top = QDir::homePath() + QStringLiteral("/.local/state");
    return pathOf(top + QStringLiteral("/coutil"));
}

std::filesystem::path pathOf(const QString& fileName) {
    return QFile::encodeName(fileName).toStdString();
}

QString fileNameOf(const std::filesystem::path& path) {
    return QFile::decodeName(path.string().c_str());
}

}  // namespace coutil
