#pragma once

#include <QDialog>
#include <QString>
#include <vector>

#include "core/problems/problem.h"
#include "core/revision/confirm.h"
#include "core/units/length.h"

class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace coutil {

class DateField;

// A pencil about to be gone over in ink.
struct ConfirmOffer {
    QString garment;
    int number = 1;    // that the revision will have
    std::string date;  // ISO 8601, to begin with
    QString by;
    QString note;
    std::vector<Problem> problems;  // that stand
    LengthUnit unit = LengthUnit::centimetre;
};

// Asks for date, name and note; says what will never change again and what problems stand. While
// errors stand it goes on only when the maker says why.
class ConfirmDialog : public QDialog {
    Q_OBJECT

  public:
    explicit ConfirmDialog(const ConfirmOffer& offer, QWidget* parent = nullptr);

    [[nodiscard]] Confirmation confirmation() const;
    [[nodiscard]] QPushButton& confirmButton() const { return *confirm_; }

  private:
    void buildFields(const ConfirmOffer& offer, QVBoxLayout& column);
    void buildProblems(const ConfirmOffer& offer, QVBoxLayout& column);
    void buildButtons(const ConfirmOffer& offer, QVBoxLayout& column);
    void showWhetherItMay();

    bool hasErrors_ = false;
    DateField* date_;
    QLineEdit* by_;
    QPlainTextEdit* note_;
    QLineEdit* reason_;
    QPushButton* confirm_;
};

}  // namespace coutil
