#pragma once

#include <QComboBox>
#include <QList>
#include <QString>

namespace coutil {

// One of a few. A wheel that only passes over it on its way down a card changes nothing.
class ChoiceField : public QComboBox {
    Q_OBJECT

  public:
    struct Choice {
        QString words;
        int value = 0;
    };

    explicit ChoiceField(QWidget* parent = nullptr);

    void setChoices(const QList<Choice>& choices);  // does not signal; keeps the value if it can
    void setValue(int value);                       // does not signal
    [[nodiscard]] int value() const;                // -1 when empty

  signals:
    void chosen(int value);  // by the maker, and different from before

  protected:
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

  private:
    int lastValue_ = -1;
};

}  // namespace coutil
