#pragma once

#include <QObject>
#include <QString>
#include <memory>

#include "core/problems/problem.h"
#include "core/store/working_copy.h"
#include "ui/window/ask_user.h"

class QWidget;

namespace coutil {

class FolioDocument;

// Everything between the open folio and files: new, open, save, recover, close. Asks before unsaved
// changes go; what fails is told and changes nothing.
class FolioFiles : public QObject {
    Q_OBJECT

  public:
    FolioFiles(FolioDocument& document, std::unique_ptr<AskUser> ask, QWidget* window);

    // True when the open folio may go: nothing unsaved, or saved now, or dropped on purpose.
    [[nodiscard]] bool mayLeave();
    // Who answers the few questions that stop the window.
    [[nodiscard]] AskUser& ask() { return *ask_; }

    void startClient();
    void openDemo();
    void chooseAndOpen();
    void openFile(const QString& file);
    // Not over what another program has written into the file meanwhile: then changedElsewhere().
    bool save();
    bool saveAnyway();  // over that too
    bool saveAs();
    void close();
    void recover(const Recoverable& found);

  signals:
    void changedElsewhere(const QString& file);
    void saved();
    void failed(const coutil::Problem& problem);
    void told(const QString& text);
    void listsChanged();   // recent files or unsaved work
    void clientStarted();  // an empty folio: the maker will measure first
    void folioOpened();    // one with something in it

  private:
    bool saveTo(const QString& file);
    [[nodiscard]] QString suggestedFile() const;

    FolioDocument& document_;
    std::unique_ptr<AskUser> ask_;
    QWidget* window_;
};

}  // namespace coutil
