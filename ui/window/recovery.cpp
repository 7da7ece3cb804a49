#include "ui/window/recovery.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>

#include "ui/document/state_folder.h"
#include "ui/window/settings.h"

namespace coutil {

namespace {

constexpr char kLeftKey[] = "recovery/left";

// Work that went on after it was left is offered again: the time is part of the name.
QString leftName(const Recoverable& found) {
    return fileNameOf(found.workingFile) + QLatin1Char('|') +
           QString::fromStdString(found.changedAt);
}

QStringList leftNames() { return openSettings()->value(kLeftKey).toStringList(); }

QDateTime changedAt(const Recoverable& found) {
    return QDateTime::fromString(QString::fromStdString(found.changedAt), Qt::ISODate);
}

}  // namespace

std::vector<Recoverable> unsavedWork() { return recoverableIn(stateFolder()); }

std::vector<Recoverable> offeredWork() {
    std::vector<Recoverable> offered = unsavedWork();
    const QStringList left = leftNames();
    std::erase_if(offered,
                  [&left](const Recoverable& found) { return left.contains(leftName(found)); });
    return offered;
}

void leaveWork(const Recoverable& found) {
    QStringList left = leftNames();
    if (!left.contains(leftName(found))) left.append(leftName(found));
    openSettings()->setValue(kLeftKey, left);
}

void expireLeftWork() {
    const QStringList left = leftNames();
    const QDateTime limit = QDateTime::currentDateTimeUtc().addDays(-kKeepLeftDays);
    QStringList kept;
    for (const Recoverable& found : unsavedWork()) {
        if (!left.contains(leftName(found))) continue;
        if (changedAt(found).isValid() && changedAt(found) < limit) {
            dropRecoverable(found);
        } else {
            kept.append(leftName(found));
        }
    }
    if (kept != left) openSettings()->setValue(kLeftKey, kept);
}

QString workName(const Recoverable& found) {
    const QString client = found.client.empty()
                               ? QCoreApplication::translate("Recovery", "Client without a name")
                               : QString::fromStdString(found.client);
    const QString when = QLocale().toString(changedAt(found).toLocalTime(), QLocale::ShortFormat);
    if (found.original.empty()) {
        return QCoreApplication::translate("Recovery", "%1, %2, never saved").arg(client, when);
    }
    return QCoreApplication::translate("Recovery", "%1, %2, from %3")
        .arg(client, when, fileNameOf(found.original.filename()));
}

}  // namespace coutil
