#pragma once

#include "ui/benches/bench.h"
#include "ui/benches/problem_spot.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

class FolioDocument;
class ProblemList;
class Table;
struct Problem;

// A bench that shows a scene made from the document on the table, and follows the document while
// it is entered. One that is not entered costs nothing; it catches up when it is.
class TableBench : public Bench {
    Q_OBJECT

  public:
    TableBench(FolioDocument& document, Table& table, QWidget* parent = nullptr);

    void enter() override;
    void leave() override;

  protected:
    virtual void showCard() = 0;
    [[nodiscard]] virtual TableScene sceneNow() = 0;
    [[nodiscard]] virtual ProblemSpot spotNow(const Problem& problem) const;
    virtual void pickedChanged() {}
    virtual void forgetOld() {}  // the document has changed; called whether entered or not

    [[nodiscard]] FolioDocument& document() const { return document_; }
    [[nodiscard]] Table& table() const { return table_; }
    [[nodiscard]] bool isEntered() const { return isEntered_; }
    [[nodiscard]] QString nothingYet() const;  // what an empty table says

    void followNow();                   // card and table show the document as it is
    void showSceneNow();                // only the table
    void pointWith(ProblemList& list);  // hovering lights, a click goes there
    void light(const Problem& problem);
    void goTo(const Problem& problem);

  private:
    FolioDocument& document_;
    Table& table_;
    bool isEntered_ = false;
};

}  // namespace coutil
