#pragma once

#include <QFrame>
#include <QWidget>
#include <vector>

#include "core/problems/problem.h"
#include "core/units/length.h"

class QLabel;
class QVBoxLayout;

namespace coutil {

// One problem as a sentence. Under the pointer or with the keyboard it points at its place; a
// click or Enter goes there.
class ProblemLine : public QFrame {
    Q_OBJECT

  public:
    explicit ProblemLine(QWidget* parent = nullptr);
    void showProblem(const Problem& problem, LengthUnit unit);

  signals:
    void pointed(bool isPointed);
    void chosen();

  protected:
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    QLabel* sentence_;
    Severity severity_ = Severity::note;
};

// All problems of a draft, errors first; says so where there are none.
class ProblemList : public QWidget {
    Q_OBJECT

  public:
    explicit ProblemList(QWidget* parent = nullptr);
    ~ProblemList() override;
    void showProblems(const std::vector<Problem>& problems, LengthUnit unit);
    [[nodiscard]] const std::vector<Problem>& problems() const { return problems_; }

  signals:
    void pointed(const coutil::Problem& problem);
    void pointedAway();
    void chosen(const coutil::Problem& problem);

  private:
    ProblemLine* makeLine();

    QVBoxLayout* column_;
    QLabel* none_;
    std::vector<Problem> problems_;
    std::vector<ProblemLine*> lines_;
};

}  // namespace coutil
