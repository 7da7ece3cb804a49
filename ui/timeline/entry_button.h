#pragma once

#include <QAbstractButton>
#include <functional>

#include "core/revision/timeline.h"
#include "ui/canvas/ink_colours.h"
#include "ui/timeline/timeline_words.h"

namespace coutil {

// One entry on the timeline: a dot in its ink, a cross for a fitting, a wave for a pencil, and its
// words behind it. The middle of the dot is kDotMiddlePx from the left.
class EntryButton : public QAbstractButton {
    Q_OBJECT

  public:
    static constexpr int kDotMiddlePx = 10;

    explicit EntryButton(QWidget* parent);

    void showEntry(TimelineKind kind, int revisionNumber, const EntryWords& words);
    void setShown(bool isShown);  // it is on the table
    [[nodiscard]] bool isShown() const { return isShown_; }
    // Asked for when the pointer rests on it: 200 of them need no words beforehand.
    void setToolTipSource(std::function<QString()> words);
    [[nodiscard]] QString toolTipText() const;

    [[nodiscard]] int wordsWidth() const;  // behind the dot
    [[nodiscard]] QSize sizeHint() const override;

  signals:
    void chosen();           // a click or Enter
    void chosenBeside();     // with Ctrl or Shift, or the key C: compare it with what is shown
    void stepped(int by);    // left or right by the keyboard
    void ended(bool isEnd);  // Home, End
    void entered();          // has the keyboard

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    [[nodiscard]] QFont nameFont() const;
    void paintSign(QPainter& painter) const;
    void paintWords(QPainter& painter) const;

    TimelineKind kind_ = TimelineKind::pencil;
    int number_ = 1;
    EntryWords words_;
    bool isShown_ = false;
    std::function<QString()> toolTip_;
};

}  // namespace coutil
