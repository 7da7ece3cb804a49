#pragma once

#include <QWidget>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/folio.h"
#include "core/units/length.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace coutil {

class ProblemLine;
class TextField;

// One problem, which may be set aside with a reason unless it is an error; or one that was, greyed,
// with the reason.
class FitProblemLine : public QWidget {
    Q_OBJECT

  public:
    explicit FitProblemLine(QWidget* parent = nullptr);
    void showProblem(const Problem& problem, const SetAside* setAside, bool maySetAside,
                     LengthUnit unit);
    [[nodiscard]] ProblemLine& line() { return *line_; }

  signals:
    void setAside(const QString& reason);
    void takenBack();

  private:
    void ask();

    bool isAside_ = false;
    ProblemLine* line_;
    QLabel* reason_;
    TextField* answer_;
    QPushButton* button_;
};

// All problems of what is on the table, errors first, those set aside last.
class FitProblemPart : public QWidget {
    Q_OBJECT

  public:
    explicit FitProblemPart(QWidget* parent = nullptr);
    ~FitProblemPart() override;
    // `maySetAside`: there is a pencil to keep it with.
    void showProblems(const std::vector<Problem>& problems, const std::vector<SetAside>& setAside,
                      bool maySetAside, LengthUnit unit);

  signals:
    void pointed(const coutil::Problem& problem);
    void pointedAway();
    void chosen(const coutil::Problem& problem);
    void setAside(const coutil::SetAside& aside);
    void takenBack(const coutil::SetAside& aside);

  private:
    FitProblemLine* makeLine();

    QVBoxLayout* column_;
    QLabel* none_;
    std::vector<Problem> problems_;
    std::vector<FitProblemLine*> lines_;
};

// What is kept of a problem that is set aside.
[[nodiscard]] SetAside setAsideOf(const Problem& problem, const std::string& reason);

}  // namespace coutil
