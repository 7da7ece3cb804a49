#pragma once

#include <QWidget>

class QLineEdit;
class QPushButton;
class QScrollArea;

namespace coutil {

class FolioDocument;
class HistoryActions;
class TimelineDrawing;

// The timeline along the foot of the window: revisions in their inks, fittings, branches, pencils
// at the end, and the button that confirms the pencil on the table. A click shows an entry, a click
// with Ctrl or Shift compares it with what is shown.
class TimelineStrip : public QWidget {
    Q_OBJECT

  public:
    TimelineStrip(FolioDocument& document, HistoryActions& actions, QWidget* parent = nullptr);
    ~TimelineStrip() override;

    [[nodiscard]] TimelineDrawing& drawing() { return *drawing_; }
    // A field over a pencil's words, to type its name into: Enter takes it, Esc leaves it.
    void startNaming(const QString& pencil);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void layOut();
    void connectDrawing();
    void showDocument();
    void fitHeight();
    void scrollTo(int index);
    void popUpMenu(int index, const QPoint& globalPosition);
    void takeName();
    void stopNaming();

    FolioDocument& document_;
    HistoryActions& actions_;
    TimelineDrawing* drawing_;
    QScrollArea* area_;
    QPushButton* confirm_;
    QLineEdit* name_;
    std::string named_;  // id of the pencil being named
};

}  // namespace coutil
