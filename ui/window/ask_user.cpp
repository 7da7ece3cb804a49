#include "ui/window/ask_user.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

#include "ui/window/confirm_dialog.h"

namespace coutil {

namespace {

QString words(const char* text) { return QCoreApplication::translate("AskUser", text); }

QString folioFilter() {
    return words(QT_TRANSLATE_NOOP("AskUser", "Folios (*.coutil)")) + QStringLiteral(";;") +
           words(QT_TRANSLATE_NOOP("AskUser", "All files (*)"));
}

}  // namespace

LeaveChoice DialogAskUser::unsavedChanges(QWidget* window, const QString& client) {
    QMessageBox box(window);
    box.setWindowTitle(words(QT_TRANSLATE_NOOP("AskUser", "Unsaved changes")));
    box.setText(client.isEmpty()
                    ? words(QT_TRANSLATE_NOOP("AskUser", "This folio has unsaved changes."))
                    : words(QT_TRANSLATE_NOOP("AskUser", "The folio of %1 has unsaved changes."))
                          .arg(client));
    box.setInformativeText(words(QT_TRANSLATE_NOOP("AskUser", "Save them before it is closed?")));
    const auto* save = box.addButton(QMessageBox::Save);
    auto* drop = box.addButton(words(QT_TRANSLATE_NOOP("AskUser", "Close without saving")),
                               QMessageBox::DestructiveRole);
    box.addButton(QMessageBox::Cancel);
    box.setDefaultButton(QMessageBox::Save);
    box.exec();
    if (box.clickedButton() == save) return LeaveChoice::save;
    return box.clickedButton() == drop ? LeaveChoice::drop : LeaveChoice::stay;
}

QString DialogAskUser::fileToOpen(QWidget* window, const QString& folder) {
    return QFileDialog::getOpenFileName(window, words(QT_TRANSLATE_NOOP("AskUser", "Open a folio")),
                                        folder, folioFilter());
}

QString DialogAskUser::fileToSave(QWidget* window, const QString& suggestion) {
    QFileDialog dialog(window, words(QT_TRANSLATE_NOOP("AskUser", "Save the folio")), suggestion,
                       folioFilter());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("coutil"));
    dialog.selectFile(suggestion);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

std::optional<Confirmation> DialogAskUser::confirmation(QWidget* window,
                                                        const ConfirmOffer& offer) {
    ConfirmDialog dialog(offer, window);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return dialog.confirmation();
}

QStringList DialogAskUser::picturesToAttach(QWidget* window) {
    const QString filter = words(QT_TRANSLATE_NOOP("AskUser", "Photos (*.jpg *.jpeg *.png)"));
    return QFileDialog::getOpenFileNames(
        window, words(QT_TRANSLATE_NOOP("AskUser", "Attach photos")), {}, filter);
}

LeaveChoice QueuedAnswers::unsavedChanges(QWidget*, const QString&) {
    ++asked;
    if (!leaveChoices.isEmpty()) return leaveChoices.takeFirst();
    ++unanswered;
    return LeaveChoice::stay;
}

QString QueuedAnswers::fileToOpen(QWidget*, const QString&) { return nextFile(); }

QString QueuedAnswers::fileToSave(QWidget*, const QString&) { return nextFile(); }

std::optional<Confirmation> QueuedAnswers::confirmation(QWidget*, const ConfirmOffer&) {
    ++asked;
    if (!confirmations.isEmpty()) return confirmations.takeFirst();
    ++unanswered;
    return std::nullopt;
}

QStringList QueuedAnswers::picturesToAttach(QWidget*) {
    const QString file = nextFile();
    return file.isEmpty() ? QStringList() : QStringList{file};
}

QString QueuedAnswers::nextFile() {
    ++asked;
    if (!files.isEmpty()) return files.takeFirst();
    ++unanswered;
    return {};
}

}  // namespace coutil
