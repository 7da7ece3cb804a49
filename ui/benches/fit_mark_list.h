#pragma once

#include <QFrame>
#include <QWidget>
#include <string>
#include <vector>

#include "core/alterations/mark.h"
#include "core/units/length.h"

class QCheckBox;
class QLabel;
class QToolButton;
class QVBoxLayout;

namespace coutil {

class LengthField;

// One mark of the list: on or off, where it is, how much, away with it. Up and down change the
// amount by a step of the unit.
class FitMarkLine : public QFrame {
    Q_OBJECT

  public:
    explicit FitMarkLine(QWidget* parent = nullptr);
    void showMark(const Mark& mark, bool isPicked, LengthUnit unit);
    [[nodiscard]] const Mark& mark() const { return mark_; }

  signals:
    void picked();
    void edited(const coutil::Mark& after, const QString& field);
    void removed();
    void left();

  protected:
    void focusInEvent(QFocusEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void connectFields();

    Mark mark_;
    MarkKind enteredKind_ = MarkKind::pinned;
    bool isTyping_ = false;
    bool isPicked_ = false;
    QCheckBox* isOn_;
    QLabel* words_;
    LengthField* amount_;
    QToolButton* remove_;
};

// The marks of a fitting in their order.
class FitMarkList : public QWidget {
    Q_OBJECT

  public:
    explicit FitMarkList(QWidget* parent = nullptr);
    void showMarks(const std::vector<Mark>& marks, const std::string& picked, LengthUnit unit);
    [[nodiscard]] FitMarkLine* line(std::size_t index) const { return lines_.at(index); }

  signals:
    void picked(const std::string& mark);
    void edited(const coutil::Mark& after, const QString& field);
    void removed(const std::string& mark);
    void left();

  private:
    FitMarkLine* makeLine();

    QVBoxLayout* column_;
    QLabel* none_;
    std::vector<FitMarkLine*> lines_;
};

}  // namespace coutil
