#include "ui/projecting/projector_screens.h"

#include <QGuiApplication>
#include <QScreen>
#include <QStringList>

#include "core/units/length.h"
#include "ui/window/settings.h"

namespace coutil {

namespace {

constexpr char kScreenKey[] = "projector/screen";

// The same projector on another socket is the same; at another resolution it throws other pixels.
QString keyOf(const QScreen& screen) {
    const QSizeF px = QSizeF(screen.size()) * screen.devicePixelRatio();
    QStringList parts{screen.manufacturer(), screen.model(), screen.serialNumber()};
    parts.removeAll(QString());
    if (parts.isEmpty()) parts << screen.name();
    parts << QStringLiteral("%1x%2").arg(px.width()).arg(px.height());
    return QString::fromLatin1(parts.join(QLatin1Char(' ')).toUtf8().toPercentEncoding(" "));
}

QString settingKey(const QScreen& screen, const char* what) {
    return QStringLiteral("projector/%1/%2").arg(keyOf(screen), QLatin1String(what));
}

}  // namespace

QString screenName(const QScreen& screen) {
    QStringList parts{screen.manufacturer(), screen.model()};
    parts.removeAll(QString());
    if (parts.isEmpty()) parts << screen.name();
    if (parts.join(QString()).isEmpty())
        parts = {QCoreApplication::translate("Projector", "screen")};
    return QStringLiteral("%1, %2 × %3")
        .arg(parts.join(QLatin1Char(' ')))
        .arg(screen.size().width())
        .arg(screen.size().height());
}

QScreen* projectorScreen(const QScreen* window) {
    const QList<QScreen*> screens = QGuiApplication::screens();
    const QString kept = openSettings()->value(kScreenKey).toString();
    for (QScreen* screen : screens) {
        if (keyOf(*screen) == kept) return screen;
    }
    for (QScreen* screen : screens) {
        if (screen != window) return screen;
    }
    return screens.isEmpty() ? nullptr : screens.front();
}

void rememberProjectorScreen(const QScreen& screen) {
    openSettings()->setValue(kScreenKey, keyOf(screen));
}

QScreen* screenAfter(const QScreen* screen) {
    const QList<QScreen*> screens = QGuiApplication::screens();
    if (screens.isEmpty()) return nullptr;
    const qsizetype at = screens.indexOf(const_cast<QScreen*>(screen));
    return screens.at((at + 1) % screens.size());
}

std::optional<ProjectorCalibration> keptCalibration(const QScreen& screen) {
    const auto settings = openSettings();
    const QVariant across = settings->value(settingKey(screen, "acrossPxPerMm"));
    const QVariant up = settings->value(settingKey(screen, "upPxPerMm"));
    if (!across.isValid() || !up.isValid()) return std::nullopt;
    return calibrationFrom(QSizeF(across.toDouble(), up.toDouble()), QSizeF(1, 1));
}

void keepCalibration(const QScreen& screen, const ProjectorCalibration& calibration) {
    const auto settings = openSettings();
    settings->setValue(settingKey(screen, "acrossPxPerMm"), calibration.acrossPxPerMm);
    settings->setValue(settingKey(screen, "upPxPerMm"), calibration.upPxPerMm);
}

ProjectorCalibration claimedCalibration(const QScreen& screen) {
    const double inch = millimetresIn(LengthUnit::inch);
    const auto found = calibrationFrom(
        QSizeF(screen.physicalDotsPerInchX(), screen.physicalDotsPerInchY()), QSizeF(inch, inch));
    return found.value_or(ProjectorCalibration{4, 4});
}

}  // namespace coutil
