#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/revision/timeline.h"
#include "ui/timeline/timeline_places.h"

namespace coutil {

class EntryButton;
class FolioDocument;

// The entries of the garment's timeline and the lines between them: each line in the ink and dash
// of the revision it leads to, graphite to a pencil.
class TimelineDrawing : public QWidget {
    Q_OBJECT

  public:
    explicit TimelineDrawing(FolioDocument& document, QWidget* parent = nullptr);

    // Nothing is rebuilt where the entries are as they were.
    void showDocument();
    void forget();  // another folio: build anew at the next showDocument()

    [[nodiscard]] const std::vector<TimelineEntry>& entries() const { return entries_; }
    [[nodiscard]] EntryButton& button(int index) const;
    [[nodiscard]] int shownIndex() const { return shown_; }  // -1: none of them
    [[nodiscard]] int rows() const { return places_.rows; }
    [[nodiscard]] int rowHeight() const;

  signals:
    void chosen(int index);
    void chosenBeside(int index);
    void menuWanted(int index, const QPoint& globalPosition);
    void reached(int index);  // shown, or by the keyboard: to be scrolled to
    void laidOut();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    struct Drawn {  // what the drawing depends on
        std::string garment;
        std::vector<TimelineEntry> entries;
        std::vector<std::string> pencilNames;
        bool operator==(const Drawn&) const = default;
    };
    void rebuild();
    void layOut();
    EntryButton* makeButton(int index);
    void mark(int index, bool isShown);
    void markShown();
    void go(int index);
    void makeReachable(int index);  // with Tab; the others with the arrows

    FolioDocument& document_;
    std::optional<Drawn> drawn_;  // nothing: to be built anew
    std::vector<TimelineEntry> entries_;
    std::vector<EntryButton*> buttons_;  // as many as entries, or more
    TimelinePlaces places_;
    int shown_ = -1;
};

}  // namespace coutil
