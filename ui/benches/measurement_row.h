#pragma once

#include <QTimer>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/measurements/body.h"
#include "ui/fields/length_field.h"

class QLabel;

namespace coutil {

// One line of the Measure bench: the measurement's term, its field, and beneath them one sentence:
// what is wrong with it, or what it is estimated from. A figure no body has is refused; while it is
// being typed ("9" on the way to "96") the sentence waits for a pause.
class MeasurementRow : public QWidget {
    Q_OBJECT

  public:
    explicit MeasurementRow(Measurement id, QWidget* parent = nullptr);

    [[nodiscard]] Measurement id() const { return id_; }
    [[nodiscard]] LengthField& field() { return *field_; }
    [[nodiscard]] QString sentence() const;  // what stands beneath; empty: nothing
    [[nodiscard]] QString mark() const;      // "needed", "one of two"; empty: not needed

    void showReading(const MeasurementSet& set, LengthUnit unit);
    // What the draft says: all its problems, of which the row shows its own; the estimate of this
    // measurement, if it is one.
    void showFindings(const std::vector<Problem>& problems, const Estimate* estimate);

  signals:
    void read(std::optional<double> mm, const QString& text);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] std::optional<Problem> judge(double mm) const;
    void refuse(const Problem& problem);
    void accept();
    void takeFinding(const Problem& problem);
    void showSentence();
    void showMark();

    enum class Tone { quiet, warning, error };

    Measurement id_;
    QLabel* term_;
    QLabel* mark_;
    LengthField* field_;
    QLabel* sentence_;
    QTimer pause_;
    std::optional<Problem> refusal_;
    QString refusalText_;
    std::optional<double> readingMm_;
    QString finding_;
    Tone findingTone_ = Tone::quiet;
    bool isMissing_ = false;
    bool hasStandIn_ = false;  // missing, but another may be taken in its place
};

}  // namespace coutil
