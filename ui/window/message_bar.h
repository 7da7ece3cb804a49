#pragma once

#include <QFrame>
#include <QList>
#include <QTimer>
#include <functional>

class QLabel;
class QPushButton;
class QToolButton;

namespace coutil {

// The line above the table where the program says something. Notes go away by themselves, errors
// and offers stay until they are closed or taken; what comes in the meantime waits its turn.
class MessageBar : public QFrame {
    Q_OBJECT

  public:
    struct Message {
        QString text;
        bool isError = false;
        QString actionWords;           // empty: no button
        std::function<void()> action;  // when the button is pressed; the message is then gone
        QString otherWords{};          // a second way out, in the same manner
        std::function<void()> otherAction{};
    };

    explicit MessageBar(QWidget* parent = nullptr);

    void say(const Message& message);
    void dismiss();                           // the shown one; the next that waits comes up
    void takeBack(const QString& text);       // it is no longer so
    void dismissAll();                        // a new folio: nothing old is said about it
    [[nodiscard]] QString shownText() const;  // empty: nothing is said
    [[nodiscard]] bool isErrorShown() const;
    [[nodiscard]] bool isFleeting() const;  // what is shown goes away by itself

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void showFirst();
    void act(std::function<void()> Message::*action);
    void dye();

    QList<Message> waiting_;  // the first is the one shown
    QTimer goesAway_;
    QLabel* text_;
    QPushButton* action_;
    QPushButton* otherAction_;
    QToolButton* close_;
};

}  // namespace coutil
