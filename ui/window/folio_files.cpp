#include "ui/window/folio_files.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QWidget>
#include <utility>

#include "core/store/folio_file.h"
#include "ui/document/folio_document.h"
#include "ui/document/new_folio.h"
#include "ui/document/state_folder.h"
#include "ui/window/demo_singer.h"
#include "ui/window/recent_files.h"
#include "ui/window/settings.h"

namespace coutil {

namespace {

constexpr char kFolderKey[] = "files/folder";
constexpr char kUnitKey[] = "window/unit";

QString lastFolder() {
    QString folder = openSettings()->value(kFolderKey).toString();
    if (!folder.isEmpty() && QDir(folder).exists()) return folder;
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void remember(const QString& file) {
    addRecentFile(file);
    openSettings()->setValue(kFolderKey, QFileInfo(file).absolutePath());
}

// A new client is measured in the unit of the last folio.
LengthUnit lastUnit() {
    const int unit = openSettings()->value(kUnitKey, 1).toInt();
    return unit >= 0 && unit <= 2 ? static_cast<LengthUnit>(unit) : LengthUnit::centimetre;
}

}  // namespace

FolioFiles::FolioFiles(FolioDocument& document, std::unique_ptr<AskUser> ask, QWidget* window)
    : QObject(window), document_(document), ask_(std::move(ask)), window_(window) {}

bool FolioFiles::mayLeave() {
    if (!document_.isModified()) return true;
    const QString client = QString::fromStdString(document_.folio().client);
    switch (ask_->unsavedChanges(window_, client)) {
        case LeaveChoice::save:
            return save();
        case LeaveChoice::drop:
            return true;
        case LeaveChoice::stay:
            break;
    }
    return false;
}

void FolioFiles::startClient() {
    if (!mayLeave()) return;
    document_.open(newFolio(QString(), lastUnit()), {});
    emit clientStarted();
}

void FolioFiles::openDemo() {
    if (!mayLeave()) return;
    auto demo = demoSinger();
    if (!demo) {
        emit failed(demo.problems.front());
        return;
    }
    document_.open(*demo, {});
    emit folioOpened();
}

void FolioFiles::chooseAndOpen() {
    const QString file = ask_->fileToOpen(window_, lastFolder());
    if (!file.isEmpty()) openFile(file);
}

void FolioFiles::openFile(const QString& file) {
    const QString absolute = QFileInfo(file).absoluteFilePath();
    auto folio = readFolio(pathOf(absolute));
    if (!folio) {
        emit failed(folio.problems.front());
        return;
    }
    if (!mayLeave()) return;
    document_.open(*folio, pathOf(absolute));
    remember(absolute);
    emit folioOpened();
    emit listsChanged();
}

bool FolioFiles::save() {
    if (!document_.isOpen()) return false;
    if (document_.file().empty()) return saveAs();
    const QString file = fileNameOf(document_.file());
    if (!document_.hasFileChanged()) return saveTo(file);
    emit changedElsewhere(QDir::toNativeSeparators(file));
    return false;
}

bool FolioFiles::saveAnyway() {
    if (!document_.isOpen()) return false;
    if (document_.file().empty()) return saveAs();
    return saveTo(fileNameOf(document_.file()));
}

bool FolioFiles::saveAs() {
    if (!document_.isOpen()) return false;
    const QString file = ask_->fileToSave(window_, suggestedFile());
    return !file.isEmpty() && saveTo(file);
}

bool FolioFiles::saveTo(const QString& file) {
    const QString absolute = QFileInfo(file).absoluteFilePath();
    if (const auto problem = document_.save(pathOf(absolute))) {
        emit failed(*problem);
        return false;
    }
    remember(absolute);
    openSettings()->setValue(kUnitKey, static_cast<int>(document_.folio().unit));
    emit saved();
    emit told(tr("Saved as %1.").arg(QDir::toNativeSeparators(absolute)));
    emit listsChanged();
    return true;
}

void FolioFiles::close() {
    if (mayLeave()) document_.close();
    emit listsChanged();
}

void FolioFiles::recover(const Recoverable& found) {
    auto folio = recoveredFolio(found);
    if (!folio) {
        emit failed(folio.problems.front());
        return;
    }
    if (!mayLeave()) return;
    // The new working copy is on disk before the old one goes.
    document_.openRecovered(*folio, found.original);
    dropRecoverable(found);
    emit folioOpened();
    emit listsChanged();
    emit told(tr("Recovered as it was at the last change. Save it to keep it."));
}

QString FolioFiles::suggestedFile() const {
    if (!document_.file().empty()) return fileNameOf(document_.file());
    QString name = QString::fromStdString(document_.folio().client).trimmed();
    // What some file system or other can't hold.
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|\\x00-\\x1f]+"));
    name.replace(unfit, QStringLiteral(" "));
    name = name.simplified();
    if (name.isEmpty() || name.startsWith(QLatin1Char('.'))) name = tr("client");
    return lastFolder() + QLatin1Char('/') + name + QStringLiteral(".coutil");
}

}  // namespace coutil
