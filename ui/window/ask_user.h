#pragma once

#include <QList>
#include <QString>
#include <QStringList>
#include <optional>

#include "core/revision/confirm.h"

class QWidget;

namespace coutil {

struct ConfirmOffer;

enum class LeaveChoice { save, drop, stay };

// The few questions that stop the window. The real one shows dialogs; tests queue the answers.
class AskUser {
  public:
    virtual ~AskUser() = default;
    AskUser() = default;
    AskUser(const AskUser&) = delete;
    AskUser& operator=(const AskUser&) = delete;

    // The folio of `client` has unsaved changes and is about to go.
    [[nodiscard]] virtual LeaveChoice unsavedChanges(QWidget* window, const QString& client) = 0;
    // File names; empty when the maker thought better of it.
    [[nodiscard]] virtual QString fileToOpen(QWidget* window, const QString& folder) = 0;
    [[nodiscard]] virtual QString fileToSave(QWidget* window, const QString& suggestion) = 0;
    // A pencil is about to be confirmed; nothing when the maker thought better of it.
    [[nodiscard]] virtual std::optional<Confirmation> confirmation(QWidget* window,
                                                                   const ConfirmOffer& offer) = 0;
    // Pictures to attach; none when the maker thought better of it.
    [[nodiscard]] virtual QStringList picturesToAttach(QWidget* window) = 0;
};

class DialogAskUser : public AskUser {
  public:
    [[nodiscard]] LeaveChoice unsavedChanges(QWidget* window, const QString& client) override;
    [[nodiscard]] QString fileToOpen(QWidget* window, const QString& folder) override;
    [[nodiscard]] QString fileToSave(QWidget* window, const QString& suggestion) override;
    [[nodiscard]] std::optional<Confirmation> confirmation(QWidget* window,
                                                           const ConfirmOffer& offer) override;
    [[nodiscard]] QStringList picturesToAttach(QWidget* window) override;
};

// Answers in the order they were queued. A question without an answer is answered with stay and an
// empty name, and counted.
class QueuedAnswers : public AskUser {
  public:
    [[nodiscard]] LeaveChoice unsavedChanges(QWidget* window, const QString& client) override;
    [[nodiscard]] QString fileToOpen(QWidget* window, const QString& folder) override;
    [[nodiscard]] QString fileToSave(QWidget* window, const QString& suggestion) override;
    [[nodiscard]] std::optional<Confirmation> confirmation(QWidget* window,
                                                           const ConfirmOffer& offer) override;
    [[nodiscard]] QStringList picturesToAttach(QWidget* window) override;

    QList<LeaveChoice> leaveChoices;
    QList<QString> files;
    QList<Confirmation> confirmations;
    int asked = 0;
    int unanswered = 0;

  private:
    [[nodiscard]] QString nextFile();
};

}  // namespace coutil
