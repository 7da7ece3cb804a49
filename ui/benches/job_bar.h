#pragma once

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace coutil {

// What is being worked on, how far it is, and the button that stops it. Hidden while nothing is.
class JobBar : public QWidget {
    Q_OBJECT

  public:
    explicit JobBar(const QString& stopWords, QWidget* parent = nullptr);

    void begin(const QString& words);
    void show(double done, const QString& words);  // done from 0 to 1
    void end();
    [[nodiscard]] QPushButton& stopButton() { return *stop_; }

  signals:
    void stopped();

  private:
    QLabel* words_;
    QProgressBar* bar_;
    QPushButton* stop_;
};

}  // namespace coutil
