#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/problems/problem.h"
#include "core/units/length.h"

class QCheckBox;
class QLabel;
class QToolButton;
class QVBoxLayout;

namespace coutil {

// Every alteration of the pencil in words, on or off, with what speaks against it; and the one
// action that makes both sides equal again.
class FitAlterationList : public QWidget {
    Q_OBJECT

  public:
    explicit FitAlterationList(QWidget* parent = nullptr);

    void showAlterations(const std::vector<Alteration>& alterations,
                         const std::vector<Problem>& problems, LengthUnit unit);
    void showNone(const QString& why);
    void setWhole(bool isWhole);  // left and right have panels of their own

  signals:
    void switched(const std::string& alteration, bool isOn);
    void removed(const std::string& alteration);
    void symmetryWanted(coutil::SymmetrySource from);

  private:
    struct Line {
        QWidget* whole = nullptr;
        QCheckBox* isOn = nullptr;
        QLabel* words = nullptr;
        QLabel* problem = nullptr;
        QToolButton* remove = nullptr;
        std::string id{};
    };
    void makeLine();
    void layOutSymmetry();

    QVBoxLayout* lineColumn_;
    QLabel* none_;
    QWidget* symmetry_;
    std::vector<Line> lines_;
};

}  // namespace coutil
