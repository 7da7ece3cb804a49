#pragma once

#include <QWidget>

#include "core/store/working_copy.h"

class QVBoxLayout;

namespace coutil {

// What the window shows while no folio is open: what can be begun, what was open last, and work
// that was left unsaved.
class StartScreen : public QWidget {
    Q_OBJECT

  public:
    explicit StartScreen(QWidget* parent = nullptr);

    void refresh();  // reads the recent files and the unsaved work again

  signals:
    void demoWanted();
    void newWanted();
    void openWanted();
    void fileWanted(const QString& file);
    void recoverWanted(const coutil::Recoverable& found);
    void leaveWanted(const coutil::Recoverable& found);
    void clearRecentWanted();

  private:
    [[nodiscard]] QWidget* beginnings();
    void fillWork();
    void fillRecent();

    QVBoxLayout* work_;
    QVBoxLayout* recent_;
};

}  // namespace coutil
