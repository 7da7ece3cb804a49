#pragma once

#include <QDialog>
#include <functional>
#include <vector>

#include "ui/papers/document_papers.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QFormLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace coutil {

class FolioDocument;

// A paper to print or to save as PDF: its choices beside a picture of its pages. Not modal; it
// follows what is on the table.
class PaperDialog : public QDialog {
    Q_OBJECT

  public:
    // Asks for the file to write; an empty name when the maker thought better of it.
    using AskPath = std::function<QString(QWidget* window, const QString& suggestion)>;

    PaperDialog(FolioDocument& document, PaperKind kind, QWidget* parent = nullptr);

    // Shows what is on the table now; the dialog does so by itself while it is visible.
    void follow();
    // The older state of a change sheet; without one the parent of what is shown.
    void changedSince(const StateRef& older);
    void setAskPath(AskPath askPath) { askPath_ = std::move(askPath); }
    void setToday(const QDate& today);  // printed on the paper

    [[nodiscard]] PaperChoices choices() const;
    [[nodiscard]] const std::vector<SheetDrawing>& pages() const { return pages_; }
    [[nodiscard]] QString said() const;  // what stands under the picture

    void savePdf();
    void print();

  signals:
    void told(const QString& text);
    void failed(const coutil::Problem& problem);

  private:
    void buildChoices(QFormLayout* form);
    void buildPreview(QVBoxLayout* column);
    void fillOlder();
    void makeAgain();
    void turnPage(int by);
    void showPage();
    [[nodiscard]] QString suggestion() const;

    FolioDocument& document_;
    PaperKind kind_;
    std::vector<OlderState> states_;
    std::vector<SheetDrawing> pages_;
    int page_ = 0;
    QDate today_;
    AskPath askPath_;

    QComboBox* paper_ = nullptr;
    QComboBox* unit_ = nullptr;
    QComboBox* older_ = nullptr;
    QCheckBox* client_ = nullptr;
    QCheckBox* returns_ = nullptr;
    QDateEdit* returnBy_ = nullptr;
    QLabel* picture_ = nullptr;
    QLabel* words_ = nullptr;
    QPushButton* back_ = nullptr;
    QPushButton* forth_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
};

}  // namespace coutil
