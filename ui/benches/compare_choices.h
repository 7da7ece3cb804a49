#pragma once

#include <QWidget>
#include <vector>

#include "ui/comparing/compared_states.h"

class QPushButton;

namespace coutil {

class ChoiceField;
class FolioDocument;

// What is compared and how it is shown: A and B among all revisions and pencils, or the two sides
// of one; over each other or side by side; how much the differences are enlarged.
class CompareChoices : public QWidget {
    Q_OBJECT

  public:
    explicit CompareChoices(FolioDocument& document, QWidget* parent = nullptr);

    void refresh();  // the document's states; what is chosen stays while it exists
    // What is on the table against its parent, or what is next to it.
    void chooseShown();
    void choose(const StateRef& a, const StateRef& b);

    [[nodiscard]] bool areSides() const;
    [[nodiscard]] bool isSideBySide() const;
    [[nodiscard]] double factor() const;
    [[nodiscard]] bool hasTwo() const;  // there is something to compare
    [[nodiscard]] const StateRef& a() const { return a_; }
    [[nodiscard]] const StateRef& b() const { return b_; }

  signals:
    void chosen();      // other states
    void viewChosen();  // the same states, shown otherwise

  private:
    void buildFields();
    void showFields();
    void takeState(ChoiceField* field);
    [[nodiscard]] int indexOf(const StateRef& state) const;
    [[nodiscard]] StateRef partnerOf(const StateRef& state) const;

    FolioDocument& document_;
    std::vector<ComparableState> states_;
    StateRef a_;
    StateRef b_;
    ChoiceField* what_;
    ChoiceField* first_;
    ChoiceField* second_;
    ChoiceField* view_;
    ChoiceField* factor_;
    QPushButton* swap_;
};

}  // namespace coutil
