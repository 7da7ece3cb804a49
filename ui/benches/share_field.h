#pragma once

#include <QDoubleSpinBox>

namespace coutil {

// A share in per cent, typed or stepped; 0..1 outside. Every keystroke that reads as a number
// counts at once; a wheel that only passes over it changes nothing.
class ShareField : public QDoubleSpinBox {
    Q_OBJECT

  public:
    explicit ShareField(const QString& name, QWidget* parent = nullptr);

    void setLimits(double lowest, double highest);
    void setShare(double share);  // does not signal
    [[nodiscard]] double share() const;

  signals:
    void edited(double share);
    void left();

  protected:
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace coutil
