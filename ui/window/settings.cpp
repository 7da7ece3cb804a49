#include "ui/window/settings.h"

#include <QStandardPaths>

namespace coutil {

std::unique_ptr<QSettings> openSettings() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation);
    return std::make_unique<QSettings>(folder + QStringLiteral("/coutil/coutil.ini"),
                                       QSettings::IniFormat);
}

}  // namespace coutil
