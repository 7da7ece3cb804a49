#pragma once

#include <QString>
#include <QWidget>

namespace coutil {

// What the maker is doing now: its card stands to the right of the table, and while it is entered
// it decides what the table shows. A bench keeps no values of its own; it shows the document's and
// changes them through it.
class Bench : public QWidget {
    Q_OBJECT

  public:
    using QWidget::QWidget;

    [[nodiscard]] virtual QString benchName() const = 0;  // "Measure", translated
    virtual void enter() = 0;                             // take the table and show the document
    virtual void leave() = 0;                             // give the table back

    // What stands under the table while the bench is entered, as high as the table itself; the
    // bench keeps it and shows and hides it. nullptr: the table has all the room.
    [[nodiscard]] virtual QWidget* underTable() { return nullptr; }

    // A bench that keeps a part of its card in view scrolls the rest itself; else the card scrolls.
    [[nodiscard]] virtual bool scrollsItself() const { return false; }

  signals:
    void hint(
        const QString& text);  // what the next drag or key will do, for the foot of the window
    void besideTableWanted(bool isBeside);  // what stands under the table: beside it, or under
    void message(const QString& text, bool isError);  // for the bar above the table
};

}  // namespace coutil
